// Pictures and a walkthrough of every job of the folder, small enough to be quick.
#include <gtest/gtest.h>

#include <set>

#include "model/model.h"
#include "tests/program/program_fixture.h"
#include "tests/support/png_reader.h"

namespace program_test {
namespace {

using test_support::demoNames;
using test_support::difference;
using test_support::Difference;
using test_support::Picture;
using test_support::readPng;

using EveryDemo = InFolder;

// The same in shade: every colour darker by about as much.
bool shaded(std::uint32_t before, std::uint32_t after) {
  double least = 2, most = 0;
  for (const int shift : {16, 8, 0}) {
    const double share =
        double(after >> shift & 255) / std::max(1.0, double(before >> shift & 255));
    least = std::min(least, share);
    most = std::max(most, share);
  }
  return most <= 1.02 && most - least < 0.12;
}

// What stands where there was bare paper, or the wall of a building behind: the house, down to
// where the ground is uneven.
Difference risen(const Picture& before, const Picture& after) {
  Difference d;
  for (int y = 0; y < after.height * 3 / 4; ++y)
    for (int x = 0; x < after.width; ++x) {
      if (shaded(before.at(x, y), after.at(x, y))) continue;
      ++d.pixels;
      d.left = std::min(d.left, x);
      d.right = std::max(d.right, x);
      d.top = std::min(d.top, y);
      d.bottom = std::max(d.bottom, y);
    }
  return d;
}

TEST_F(EveryDemo, IsPicturedWithItsBuildingInTheMiddle) {
  for (const std::string& name : demoNames()) {
    const auto taken = [&](const std::string& stage) {
      const std::string out = inFolder(name + "-" + stage + ".png");
      const ProgramRun run = stringcourse({"picture", demoPath(name), "--stage", stage, "--view",
                                           "south", "--size", "320x200", "--out", out});
      EXPECT_EQ(run.exitCode, 0) << name << run.err;
      return readPng(out);
    };
    const auto stages = model::buildModel(test_support::demoJob(name)).programme.stages;
    const Picture bare = taken("damp-course"), built = taken(stages.back().id);
    ASSERT_EQ(built.width, 320) << name;
    ASSERT_EQ(built.height, 200) << name;
    const Difference house = risen(bare, built);
    EXPECT_GT(house.pixels, 320 * 200 / 12) << name;
    EXPECT_NEAR((house.left + house.right) / 2.0, 160, 24) << name;
    EXPECT_GT(house.bottom - house.top, 50) << name;
    EXPECT_GT(house.top, 0) << name;
    EXPECT_GT(house.left, 0) << name;
    EXPECT_LT(house.right, 319) << name;
  }
}

TEST_F(EveryDemo, IsWalkedThroughWithAPictureOfEachStageThatDiffersFromItsNeighbour) {
  for (const std::string& name : demoNames()) {
    SCOPED_TRACE(name);
    const std::string folder = inFolder(name);
    const ProgramRun run =
        stringcourse({"walkthrough", demoPath(name), "--out", folder, "--size", "320x200"});
    ASSERT_EQ(run.exitCode, 0) << run.err;
    std::vector<std::string> pictures;
    std::set<std::string> others;
    for (const std::string& file : namesIn(folder)) {
      if (file.ends_with(".png"))
        pictures.push_back(file);
      else
        others.insert(file);
    }
    const auto stages = model::buildModel(test_support::demoJob(name)).programme.stages;
    ASSERT_EQ(pictures.size(), stages.size());
    EXPECT_TRUE(others.count(name + ".glb"));
    EXPECT_TRUE(others.count("levels.csv"));
    // In the order of their names they are in the order of the work; each tells its own stage.
    Picture before;
    for (size_t i = 0; i < pictures.size(); ++i) {
      EXPECT_NE(pictures[i].find(stages[i].id), std::string::npos) << pictures[i];
      const Picture now = readPng(folder + "/" + pictures[i]);
      ASSERT_EQ(now.width, 320) << pictures[i];
      if (i > 0) {
        EXPECT_GT(difference(before, now).pixels, 50) << pictures[i];
      }
      before = now;
    }
  }
}

}  // namespace
}  // namespace program_test
