// The outer leaf laid dry right round an outline.
#include "model/bond/dry_bond.h"

#include <cmath>

#include <gtest/gtest.h>

#include "model/bond/bond_count.h"
#include "model/bond/bond_moves.h"
#include "tests/model/bond/laid.h"
#include "tests/support/demo_job.h"

namespace model {
namespace {

Job rectangle(double length, double width) {
  Job job;
  job.outline = {{0, 0}, {length, 0}, {length, width}, {0, width}};
  return job;
}

Opening window(const std::string& name, double at, double width) {
  Opening opening;
  opening.name = name;
  opening.wall = "A-B";
  opening.from = "A";
  opening.at = at;
  opening.width = width;
  return opening;
}

// 80 half bricks by 59: brickwork dimensions 8990 and 6627.5.
TEST(DryBond, OfARectangleInBrickSizesComesOutAndClosesRound) {
  const Laid laid(rectangle(8.990, 6.6275));
  EXPECT_TRUE(laid.bond.brokenToClose.empty());
  for (const WallBond& wall : laid.bond.walls) {
    ASSERT_EQ(wall.stretches.size(), 1u);
    EXPECT_TRUE(wall.stretches[0].fit.regular);
    for (const size_t course : {0u, 1u}) {
      for (const LaidPiece& brick : layCourse(laid.bond, wall.wall, static_cast<int>(course), {}))
        EXPECT_NEAR(brick.length(), 0.215, 1e-6);
    }
  }
  EXPECT_EQ(laid.bond.walls[0].stretches[0].fit.halfBricks, 80);
  EXPECT_EQ(laid.bond.walls[1].stretches[0].fit.halfBricks, 59);
}

// Five corners, so that one wall alone is odd: the courses of two walls would both run through.
TEST(DryBond, ThatDoesNotCloseIsBrokenOnce) {
  Job job = rectangle(8.990, 6.740);
  job.outline = {{0, 0}, {8.990, 0}, {8.990, 6.6275}, {4.4, 6.6275}, {4.4, 6.740}, {0, 6.740}};
  const Laid laid(job);
  int even = 0;
  for (const WallBond& wall : laid.bond.walls) {
    even += wall.odd ? 0 : 1;
  }
  EXPECT_EQ(even % 2, 0);
}

TEST(DryBond, BreaksUnderTheWidestOpeningSoThatTheCoursesMeet) {
  // 80 + 60 + 80 + 60 half bricks close; one wall 61 does not.
  Job job = rectangle(8.990, 6.740);
  job.outline[2] = {8.990, 6.740 + 0.1125};
  job.outline[3] = {0, 6.740};
  job.openings = {window("small", 0.890, 0.910), window("wide", 3.600 - 0.010, 2.710)};
  const Laid laid(job);
  for (size_t i = 0; i < laid.bond.walls.size(); ++i) {
    const WallBond &wall = laid.bond.walls[i], &next = laid.bond.walls[(i + 1) % 4];
    for (const size_t course : {0u, 1u})
      EXPECT_NE(wall.end.through[course], next.start.through[course]) << i;
  }
}

TEST(DryBond, TellsHowFarToMoveAWindowThatDoesNotComeOut) {
  Job job = rectangle(8.990, 6.6275);
  job.openings = {window("Window", 1.790 + 0.030, 0.890)};
  const Laid laid(job);
  const std::vector<WallMoves> moves = brickSizeMoves(laid.bond);
  ASSERT_EQ(moves.size(), 4u);
  ASSERT_EQ(moves[0].openings.size(), 1u);
  EXPECT_NEAR(moves[0].openings[0].shift, -0.030, 1e-9);
  EXPECT_NEAR(moves[0].openings[0].wider, 0.020, 1e-9);
  EXPECT_NEAR(moves[0].longer, 0, 1e-9);
  // As it says, it comes out.
  job.openings = {
      window("Window", 1.820 + moves[0].openings[0].shift, 0.890 + moves[0].openings[0].wider)};
  const Laid moved(job);
  for (const DryStretch& stretch : moved.bond.walls[0].stretches)
    EXPECT_TRUE(stretch.fit.regular) << stretch.first << " " << stretch.fit.over;
}

TEST(DryBond, LaysHalvesAtEveryOtherJamb) {
  Job job = rectangle(8.990, 6.6275);
  job.openings = {window("Window", 1.790, 0.910)};
  const Laid laid(job);
  const std::vector<std::array<double, 2>> open{{1.790, 2.700}};
  int halves = 0;
  for (const size_t course : {0u, 1u}) {
    for (const LaidPiece& brick : layCourse(laid.bond, 0, static_cast<int>(course), open)) {
      EXPECT_TRUE(brick.to < 1.790 + 1e-6 || brick.from > 2.700 - 1e-6);
      if (std::fabs(brick.length() - 0.1025) < 1e-6) ++halves;
    }
  }
  EXPECT_EQ(halves, 2);
}

TEST(DryBond, MeasuresAnUpperWindowThatIsNotOverTheJoints) {
  Job job = rectangle(8.990, 6.6275);
  job.storeys = {Storey{}, Storey{"First floor", 2.7}};
  job.openings = {window("Below", 1.790, 0.910), window("Above", 1.850, 0.910)};
  job.openings[1].storey = 1;
  const Laid laid(job);
  ASSERT_EQ(laid.bond.walls[0].offBond.size(), 1u);
  EXPECT_NEAR(laid.bond.walls[0].offBond[0].atStart, 0.0525, 1e-6);
}

// 59.26 a square metre (check M06) less nothing: a wall without openings, whole courses.
TEST(BondCount, IsTheAreaInBricks) {
  const Laid laid(rectangle(8.990, 6.6275));
  const std::vector<BondCount> counts = countBond(laid.job, laid.out, laid.bond);
  double bricks = 0, area = 0;
  for (size_t wall = 0; wall < 4; ++wall) {
    EXPECT_EQ(counts[wall].half, 0);
    EXPECT_TRUE(counts[wall].cut.empty());
    EXPECT_NEAR(counts[wall].leastLap, 0.1125, 1e-6);
    bricks += counts[wall].whole;
    // On the leaf's middle line, where corners count once.
    area += (laid.out.walls[wall].length - 0.1025) * counts[wall].courses * 0.075;
  }
  EXPECT_NEAR(bricks / area, 59.26, 0.05);
}

TEST(BondCount, OfTheDemonstrationJobsHasNoCutBricksButBesideLintels) {
  const Job job = test_support::demoJob("orchard-house");
  const Laid laid(job);
  for (const WallBond& wall : laid.bond.walls)
    for (const DryStretch& stretch : wall.stretches)
      EXPECT_TRUE(stretch.fit.regular) << stretch.first << " to " << stretch.last;
}

}  // namespace
}  // namespace model
