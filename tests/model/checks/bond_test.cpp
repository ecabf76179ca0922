// What the checks say of piers that do not come out in brick sizes.
#include <gtest/gtest.h>

#include "model/checks/check_building.h"

namespace model {
namespace {

std::string saidOf(const Job& job) {
  std::string said;
  for (const Problem& problem : checkBuilding(job, deriveSettingOut(job), "a.toml", {}))
    if (problem.what.find("not in brick sizes") != std::string::npos) said += problem.what + "\n";
  return said;
}

Job withWindow(double at, double width) {
  Job job;
  job.outline = {{0, 0}, {8.990, 0}, {8.990, 6.6275}, {0, 6.6275}};
  Opening window;
  window.name = "Window";
  window.wall = "A-B";
  window.from = "A";
  window.at = at;
  window.width = width;
  job.openings = {window};
  return job;
}

TEST(CheckBond, SaysNothingOfBrickSizes) { EXPECT_EQ(saidOf(withWindow(1.790, 0.910)), ""); }

// The 50 that the longer pier is short of go into its 27 joints.
TEST(CheckBond, NamesThePiersThatAreCut) {
  EXPECT_EQ(saidOf(withWindow(1.840, 0.910)),
            "not in brick sizes, so that bricks are cut in the middle of it: corner A to Window "
            "(50 mm over 16 half bricks)\n");
}

TEST(CheckBond, AsksWhereThePatternOfABondDoesNotMeet) {
  const auto warned = [](BondKind bond, double length) {
    Job job = withWindow(1.790, 0.910);
    job.outline[1].x = job.outline[2].x = length;
    job.walls.bond = bond;
    std::string said;
    for (const Problem& problem : checkBuilding(job, deriveSettingOut(job), "a.toml", {}))
      if (problem.what.find("bond begun") != std::string::npos ||
          problem.what.find("in a stack") != std::string::npos)
        said += problem.what + "\n";
    return said;
  };
  EXPECT_EQ(warned(BondKind::Flemish, 8.990), "");
  EXPECT_EQ(warned(BondKind::Flemish, 9.1025),
            "the bond begun at both ends does not meet in wall A-B and C-D\n");
  EXPECT_NE(warned(BondKind::Stack, 8.990).find("nothing laps"), std::string::npos);
}

}  // namespace
}  // namespace model
