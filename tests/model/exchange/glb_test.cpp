#include "model/exchange/glb.h"

#include <gtest/gtest.h>

#include <glm/geometric.hpp>

#include <fstream>
#include <limits>
#include <set>
#include <sstream>

#include "tests/model/exchange/glb_reader.h"
#include "tests/model/exchange/glb_sample.h"
#include "tests/support/random_job.h"

namespace model {
namespace {

using testing::demoJobs;
using testing::demoModel;
using testing::GlbReader;
using testing::sampleModel;

std::string textOf(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

std::string scratch(const std::string& name) {
  const auto folder = std::filesystem::path(::testing::TempDir()) / "glb_test";
  std::filesystem::create_directories(folder);
  return folder / name;
}

// Every solid of the model is in the file: the same volume by its triangles, which also says that
// they face outward, and the same bounds to a tenth of a millimetre.
void expectSameSolids(const Model& m) {
  const GlbReader file(glbBytes(m));
  for (const Element& element : m.works.elements) {
    const auto node = file.nodeWithId(element.id);
    ASSERT_FALSE(node.is_null()) << element.id;
    const Solid read = file.solidOf(node);
    const double size = surfaceArea(element.solid);
    EXPECT_NEAR(volume(read), volume(element.solid), 1e-4 * size + 1e-6) << element.id;
    const Bounds a = bounds(read), b = bounds(element.solid);
    for (int axis = 0; axis < 3; ++axis) {
      EXPECT_NEAR(a.low[axis], b.low[axis], 1e-4) << element.id;
      EXPECT_NEAR(a.high[axis], b.high[axis], 1e-4) << element.id;
    }
  }
}

TEST(Glb, HoldsEverySolidOfTheDemoJobs) {
  for (const std::string& job : demoJobs()) {
    SCOPED_TRACE(job);
    expectSameSolids(demoModel(job));
  }
}

TEST(Glb, HoldsEverySolidOfDrawnJobs) {
  for (unsigned seed = 1; seed <= 12; ++seed) {
    SCOPED_TRACE(seed);
    expectSameSolids(buildModel(test_support::seededJob(seed)));
  }
}

TEST(Glb, HoldsTheSolidsAfterOneThatHasNoArea) {
  Model m = sampleModel();
  for (Vec3& p : m.works.elements[0].solid.points) p = {8, 18, -2};
  const GlbReader file(glbBytes(m));
  EXPECT_FALSE(file.nodeWithId("ground").contains("mesh"));
  m.works.elements.erase(m.works.elements.begin());
  expectSameSolids(m);
  for (const Element& element : m.works.elements) {
    const Solid read = file.solidOf(file.nodeWithId(element.id));
    EXPECT_NEAR(volume(read), volume(element.solid), 1e-4) << element.id;
  }
}

TEST(Glb, IsTheSameBytesEachTime) {
  EXPECT_EQ(glbBytes(sampleModel()), glbBytes(sampleModel()));
  const Model m = demoModel("orchard-house.toml");
  EXPECT_EQ(glbBytes(m), glbBytes(m));
}

TEST(Glb, TellsOfStringsHowLongAndHowHighTheyAre) {
  const Model m = sampleModel();
  const StringLine& line = m.works.strings.at(0);
  const GlbReader file(glbBytes(m));
  for (const auto& node : file.json.at("nodes")) {
    if (node.at("name") != "String " + line.name) continue;
    const auto& extras = node.at("extras");
    EXPECT_EQ(extras.at("topLevel"), std::max(line.a.z, line.b.z));
    EXPECT_EQ(extras.at("undersideLevel"), std::min(line.a.z, line.b.z));
    EXPECT_NEAR(extras.at("quantity").get<double>(), glm::distance(line.a, line.b), 1e-4);
    EXPECT_EQ(extras.at("unit"), nameOf(Unit::Metre));
    return;
  }
  FAIL() << "no string";
}

TEST(Glb, NestsThingsUnderTheirStage) {
  const GlbReader file(glbBytes(sampleModel()));
  const auto& nodes = file.json.at("nodes");
  const auto& root = nodes.at(file.json.at("scenes").at(0).at("nodes").at(0).get<size_t>());
  EXPECT_EQ(root.at("name"), "Sample");
  std::map<std::string, std::vector<std::string>> tree;
  for (size_t group : root.at("children")) {
    for (size_t child : nodes.at(group).at("children")) {
      tree[nodes.at(group).at("name")].push_back(nodes.at(child).at("name"));
    }
  }
  const std::map<std::string, std::vector<std::string>> expected{
      {"Before work starts", {"Box ground"}},
      {"Before work starts (until stage 1)", {"Box spoil"}},
      {"Stage 1 - Dig the trenches", {"String A-B outer face"}},
      {"Stage 1 - Dig the trenches (until stage 2)", {"Box prop"}},
      {"Stage 2 - Pour the foundations", {"Box strip"}}};
  EXPECT_EQ(tree, expected);
}

TEST(Glb, SaysWhatEachThingIs) {
  const GlbReader file(glbBytes(sampleModel()));
  const auto extras = file.nodeWithId("prop").at("extras");
  EXPECT_EQ(extras.at("kind"), nameOf(ElementKind::Foundation));
  EXPECT_EQ(extras.at("material"), nameOf(Material::Concrete));
  EXPECT_EQ(extras.at("stage"), "Dig the trenches");
  EXPECT_EQ(extras.at("stageNumber"), 1);
  EXPECT_EQ(extras.at("removedIn"), "Pour the foundations");
  EXPECT_EQ(extras.at("removedInNumber"), 2);
  EXPECT_EQ(extras.at("undersideLevel"), -1.0);
  EXPECT_EQ(extras.at("topLevel"), 0.0);
  EXPECT_EQ(extras.at("quantity"), 0.01);
  EXPECT_EQ(extras.at("unit"), nameOf(Unit::CubicMetre));
  EXPECT_FALSE(extras.contains("wall"));  // it belongs to none, and empty values are not written
}

TEST(Glb, TakesTheMiddleOfThePlanOffAndSaysSo) {
  const GlbReader file(glbBytes(sampleModel()));
  const auto& extras = file.json.at("asset").at("extras");
  EXPECT_EQ(extras.at("originEast"), 12.0);
  EXPECT_EQ(extras.at("originNorth"), 21.0);
  EXPECT_EQ(extras.at("originLevel"), 0.0);
}

TEST(Glb, RestsAsTheFinishedBuilding) {
  const GlbReader file(glbBytes(sampleModel()));
  for (const auto& node : file.json.at("nodes")) {
    const std::string name = node.at("name");
    const bool gone = name.find("(until stage") != std::string::npos;
    EXPECT_EQ(node.contains("scale"), gone) << name;
    if (gone) {
      EXPECT_EQ(node.at("scale"), nlohmann::json({0.0, 0.0, 0.0}));
    }
  }
}

TEST(Glb, StepsBetweenNothingAndWhole) {
  const GlbReader file(glbBytes(sampleModel()));
  const auto& animation = file.json.at("animations").at(0);
  EXPECT_EQ(animation.at("channels").size(), 4u);  // all groups but the ground that stays
  for (const auto& sampler : animation.at("samplers")) {
    EXPECT_EQ(sampler.at("interpolation"), "STEP");
    for (double scale : file.values(sampler.at("output"))) EXPECT_TRUE(scale == 0 || scale == 1);
    const auto times = file.values(sampler.at("input"));
    EXPECT_EQ(times.front(), 0);
    EXPECT_EQ(times.back(), 1.5 * 3 + 3);
  }
}

TEST(Glb, TellsThingsOfOneNameApart) {
  Model m = sampleModel();
  for (Element& element : m.works.elements) element.name = "Box";
  m.works.elements[1].name = "Box (2)";  // a name that looks like a made one
  const GlbReader file(glbBytes(m));
  std::set<std::string> names;
  for (const auto& node : file.json.at("nodes")) {
    EXPECT_TRUE(names.insert(node.at("name")).second) << node.at("name");
  }
}

TEST(Glb, HasNoAnimationWhenNothingChanges) {
  Model m = sampleModel();
  m.works.elements.resize(1);
  m.works.strings.clear();
  EXPECT_FALSE(GlbReader(glbBytes(m)).json.contains("animations"));
}

TEST(Glb, IsWholeEvenForAModelWithoutAnything) {
  const GlbReader file(glbBytes(Model{}));
  EXPECT_FALSE(file.json.contains("buffers"));
  EXPECT_TRUE(file.binary.empty());
}

TEST(Glb, KeepsTheOldFileWhenATextIsNotUtf8) {
  const std::string path = scratch("bad_text.glb");
  std::ofstream(path) << "old";
  Model m = sampleModel();
  m.works.elements[0].name = "caf\xE9";
  const auto problem = writeGlb(m, path);
  ASSERT_TRUE(problem);
  EXPECT_NE(problem->what.find("UTF-8"), std::string::npos);
  EXPECT_EQ(textOf(path), "old");
}

TEST(Glb, KeepsTheOldFileWhenANumberIsNotFinite) {
  const std::string path = scratch("bad_number.glb");
  std::ofstream(path) << "old";
  Model m = sampleModel();
  m.works.elements[0].solid.points[3].z = std::numeric_limits<double>::quiet_NaN();
  ASSERT_TRUE(writeGlb(m, path));
  m = sampleModel();
  m.works.elements[0].quantity.amount = std::numeric_limits<double>::infinity();
  ASSERT_TRUE(writeGlb(m, path));
  EXPECT_EQ(textOf(path), "old");
}

TEST(Glb, ReportsAPathThatCannotBeWritten) {
  const std::string path = scratch("no such folder") + "/site.glb";
  const auto problem = writeGlb(sampleModel(), path);
  ASSERT_TRUE(problem);
  EXPECT_EQ(problem->severity, Severity::Error);
  EXPECT_FALSE(std::filesystem::exists(path));
}

TEST(Glb, WritesTheVeryBytesToDisk) {
  const std::string path = scratch("site.glb");
  ASSERT_FALSE(writeGlb(sampleModel(), path));
  EXPECT_EQ(textOf(path), glbBytes(sampleModel()));
}

TEST(Glb, RefusesAnAnimationWithoutTime) {
  for (double seconds : {0.0, -1.0, std::numeric_limits<double>::quiet_NaN()}) {
    EXPECT_THROW(glbBytes(sampleModel(), {seconds}), std::runtime_error);
  }
}

}  // namespace
}  // namespace model
