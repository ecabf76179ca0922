// An outside reader opens the files: what it finds must be what the model has.
#include <assimp/scene.h>

#include <algorithm>
#include <assimp/Importer.hpp>
#include <map>
#include <set>

#include "model/exchange/glb.h"
#include "model/exchange/glb_document.h"
#include "model/exchange/glb_groups.h"
#include "tests/model/exchange/glb_sample.h"

namespace model {
namespace {

using testing::demoJobs;
using testing::demoModel;

struct Imported {
  explicit Imported(const Model& m) {
    const std::string bytes = glbBytes(m);
    scene = importer.ReadFileFromMemory(bytes.data(), bytes.size(), 0, "glb");
    if (!scene) throw std::runtime_error(importer.GetErrorString());
    visit(scene->mRootNode);
  }

  void visit(const aiNode* node) {
    aiString id;
    if (node->mMetaData && node->mMetaData->Get("id", id)) byId[id.C_Str()] = node;
    byName[node->mName.C_Str()] = node;
    for (unsigned i = 0; i < node->mNumChildren; ++i) visit(node->mChildren[i]);
  }

  Assimp::Importer importer;
  const aiScene* scene = nullptr;
  std::map<std::string, const aiNode*> byId, byName;
};

class GlbImport : public ::testing::TestWithParam<std::string> {};

// In the format's axes: x east, y up, z south.
Bounds turned(const Bounds& b, const Vec3& origin) {
  return {{b.low.x - origin.x, b.low.z - origin.z, -(b.high.y - origin.y)},
          {b.high.x - origin.x, b.high.z - origin.z, -(b.low.y - origin.y)}};
}

TEST_P(GlbImport, FindsEveryThingWithItsNameWhereTheModelHasIt) {
  const Model m = demoModel(GetParam());
  const Imported file(m);
  ASSERT_EQ(file.byId.size(), m.works.elements.size());
  for (const Element& element : m.works.elements) {
    const aiNode* node = file.byId.at(element.id);
    EXPECT_EQ(std::string(node->mName.C_Str()).find(element.name), 0u) << element.id;
    ASSERT_EQ(node->mNumMeshes, 1u);
    const aiMesh* read = file.scene->mMeshes[node->mMeshes[0]];
    Bounds found;
    for (unsigned i = 0; i < read->mNumVertices; ++i) {
      found.add({read->mVertices[i].x, read->mVertices[i].y, read->mVertices[i].z});
    }
    const Bounds expected = turned(bounds(element.solid), glbOrigin(m.settingOut));
    for (int axis = 0; axis < 3; ++axis) {
      EXPECT_NEAR(found.low[axis], expected.low[axis], 0.001) << element.id;
      EXPECT_NEAR(found.high[axis], expected.high[axis], 0.001) << element.id;
    }
  }
}

TEST_P(GlbImport, FindsEveryStringLine) {
  const Model m = demoModel(GetParam());
  const Imported file(m);
  size_t lines = 0;
  for (unsigned i = 0; i < file.scene->mNumMeshes; ++i) {
    lines += file.scene->mMeshes[i]->mPrimitiveTypes == aiPrimitiveType_LINE ? 1 : 0;
  }
  EXPECT_EQ(lines, m.works.strings.size());
}

// This reader forgets that keys step, so it is asked as it would play: along straight lines.
double scaleAt(const aiNodeAnim& channel, double ticks) {
  for (unsigned i = 1; i < channel.mNumScalingKeys; ++i) {
    const aiVectorKey &a = channel.mScalingKeys[i - 1], &b = channel.mScalingKeys[i];
    if (ticks <= b.mTime) {
      return a.mValue.x + (ticks - a.mTime) / (b.mTime - a.mTime) * (b.mValue.x - a.mValue.x);
    }
  }
  return channel.mScalingKeys[channel.mNumScalingKeys - 1].mValue.x;
}

TEST_P(GlbImport, PlaysWhatStandsAtTheEndOfEachStage) {
  const Model m = demoModel(GetParam());
  const Imported file(m);
  ASSERT_EQ(file.scene->mNumAnimations, 1u);
  const aiAnimation& animation = *file.scene->mAnimations[0];
  EXPECT_STREQ(animation.mName.C_Str(), "Construction sequence");
  std::map<std::string, const aiNodeAnim*> channels;
  for (unsigned i = 0; i < animation.mNumChannels; ++i) {
    channels[animation.mChannels[i]->mNodeName.C_Str()] = animation.mChannels[i];
  }
  const GlbClock clock{1.5, m.programme.stages.size()};
  for (int moment = 0; moment <= int(m.programme.stages.size()); ++moment) {
    const double seconds = clock.startOf(moment - 1) + clock.secondsPerStage / 2;
    std::set<std::string> shown, standing;
    for (const auto& [id, node] : file.byId) {
      const auto channel = channels.find(node->mParent->mName.C_Str());
      const double scale = channel == channels.end()
                               ? 1
                               : scaleAt(*channel->second, seconds * animation.mTicksPerSecond);
      EXPECT_TRUE(scale == 0 || scale == 1) << id << " at " << seconds << " s";
      if (scale == 1) shown.insert(id);
    }
    for (size_t i : standingAt(m.programme, m.works, moment)) {
      standing.insert(m.works.elements[i].id);
    }
    EXPECT_EQ(shown, standing) << "after stage " << moment;
  }
}

INSTANTIATE_TEST_SUITE_P(DemoJobs, GlbImport, ::testing::ValuesIn(demoJobs()), [](const auto& job) {
  std::string name = job.param.substr(0, job.param.find('.'));
  std::replace(name.begin(), name.end(), '-', '_');
  return name;
});

}  // namespace
}  // namespace model
