// Readings in the GLB: markers with their words, and extras of what was read.
#include <gtest/gtest.h>

#include <cmath>
#include <set>

#include "model/asbuilt/as_built.h"
#include "model/exchange/glb.h"
#include "model/exchange/glb_document.h"
#include "tests/model/exchange/glb_reader.h"
#include "tests/support/demo_job.h"

namespace model {
namespace {

using nlohmann::json;
using testing::GlbReader;

struct House {
  Model with = buildModel(test_support::demoJob("orchard-house"));
  Model without = with;
  House() {
    for (ReadingSet& set : without.job.readings) set.rows.clear();
  }
};

const House& house() {
  static const House house;
  return house;
}

const json* nodeNamed(const json& document, const std::string& name) {
  for (const json& node : document.at("nodes")) {
    if (node.at("name") == name) return &node;
  }
  return nullptr;
}

TEST(GlbReadings, AreMarkersThatSayWhatWasRead) {
  const GlbReader file(glbBytes(house().with));
  const json* marker = nodeNamed(file.json, "Reading: top of concrete, corner E, 12 low");
  ASSERT_NE(marker, nullptr);
  const json& extras = marker->at("extras");
  EXPECT_EQ(extras.at("deviation"), "12 low, 10 allowed: out");
  EXPECT_EQ(extras.at("deviationMm"), -12);
  EXPECT_EQ(extras.at("photo"), "concrete-corner-e.jpg");
  EXPECT_EQ(extras.at("set"), "Concrete");
  EXPECT_FALSE(extras.contains("id"));
  // It stands on the corner, point down.
  const auto& primitive =
      file.json.at("meshes").at(marker->at("mesh").get<size_t>()).at("primitives").at(0);
  const auto positions = file.values(primitive.at("attributes").at("POSITION").get<size_t>());
  const Vec3 origin = glbOrigin(house().with.settingOut);
  double low = 1e300;
  for (size_t i = 0; i < positions.size(); i += 3) {
    const double level = positions[i + 1] + origin.z;
    low = std::min(low, level);
    const double east = positions[i] + origin.x - 5.390;
    const double north = -positions[i + 2] + origin.y - 9.665;
    const double away = std::hypot(east, north);
    if (level < -0.9) {
      EXPECT_NEAR(away, 0, 1e-4);
    }
    EXPECT_LT(away, 0.2);
  }
  EXPECT_NEAR(low, -0.987, 1e-4);
  EXPECT_EQ(file.json.at("materials").at(primitive.at("material").get<size_t>()).at("name"),
            "reading out");
}

TEST(GlbReadings, AreInTheExtrasOfWhatWasRead) {
  const GlbReader file(glbBytes(house().with));
  size_t foundations = 0, rafters = 0;
  for (const json& node : file.json.at("nodes")) {
    if (!node.contains("extras")) continue;
    const json& extras = node.at("extras");
    if (extras.value("kind", "") == "foundation" && extras.contains("asBuilt")) {
      ++foundations;
      if (extras.value("wall", "") == "E-F") {
        EXPECT_EQ(extras.at("asBuiltVerdict"), "out");
        EXPECT_EQ(extras.at("asBuiltWorstMm"), -12);
        EXPECT_NE(extras.at("asBuilt").get<std::string>().find("corner E: 12 low"),
                  std::string::npos);
      }
    }
    if (extras.value("id", "") == "rafters/A-B/28") {
      EXPECT_NEAR(extras.at("longerRidgeHeldMm").get<double>(), 6.8, 0.05);
      EXPECT_NEAR(extras.at("longerPitchHeldMm").get<double>(), 10.9, 0.05);
      ++rafters;
    }
  }
  EXPECT_GT(foundations, 0u);
  EXPECT_EQ(rafters, 1u);
}

// What else the file holds is the same as without them: names, order, and the animation's moments.
TEST(GlbReadings, LeaveTheBuildingAndItsSequenceAsTheyAre) {
  const GlbReader with(glbBytes(house().with)), without(glbBytes(house().without));
  EXPECT_EQ(nodeNamed(without.json, "Readings"), nullptr);
  const json* group = nodeNamed(with.json, "Readings");
  ASSERT_NE(group, nullptr);
  EXPECT_FALSE(group->contains("scale"));  // there at rest
  std::vector<std::string> names, other;
  for (const json& node : with.json.at("nodes")) {
    const std::string name = node.at("name");
    if (name != "Readings" && !name.starts_with("Reading: ")) names.push_back(name);
  }
  for (const json& node : without.json.at("nodes")) other.push_back(node.at("name"));
  EXPECT_EQ(names, other);
  const auto& channels = with.json.at("animations").at(0).at("channels");
  const auto& before = without.json.at("animations").at(0).at("channels");
  ASSERT_EQ(channels.size(), before.size() + 1);
  for (size_t i = 0; i < before.size(); ++i) {
    const auto times = [&](const GlbReader& file, const char* key) {
      const auto& animation = file.json.at("animations").at(0);
      const auto sampler = animation.at("channels").at(i).at("sampler").get<size_t>();
      return file.values(animation.at("samplers").at(sampler).at(key).get<size_t>());
    };
    EXPECT_EQ(times(with, "input"), times(without, "input"));
    EXPECT_EQ(times(with, "output"), times(without, "output"));
  }
}

TEST(GlbReadings, EveryOneHasAMarkerAndEveryNameIsItsOwn) {
  const AsBuilt built = deriveAsBuilt(house().with.job, house().with.settingOut);
  const GlbReader file(glbBytes(house().with));
  EXPECT_EQ(nodeNamed(file.json, "Readings")->at("children").size(), built.deviations.size());
  std::set<std::string> names;
  for (const char* list : {"nodes", "meshes"}) {
    for (const json& each : file.json.at(list)) EXPECT_TRUE(names.insert(each.at("name")).second);
  }
}

}  // namespace
}  // namespace model
