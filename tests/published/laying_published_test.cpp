// Bricks, blocks and mortar as the takeoff counts them, against published figures.
#include <gtest/gtest.h>

#include "model/takeoff/unit_rates.h"
#include "tests/published/rectangle_job.h"

namespace published {
namespace {

using namespace model;

// Sixteen bricks and a half by twelve and a half, with no opening: all comes out whole.
Model plainWalls(const LayingRates& laying = {}) {
  Job job = rectangleJob(8.99, 6.6275);
  job.laying = laying;
  return buildModel(job);
}

// 59.26 a square metre, quoted as 60: Reference.com, "How many bricks are required per square
// metre". Counted from the bricks laid, on the middle of the leaf, where a corner counts once.
TEST(PublishedLaying, BricksToASquareMetreOfHalfBrickWall) {
  const Model m = plainWalls();
  const double counted = amountOf(m, "Facing bricks") / amountOf(m, "Facing brickwork");
  EXPECT_NEAR(counted, 59.26, 0.15);
  EXPECT_LT(counted, 60);
}

// 9.88 a square metre of 440 x 215 blocks, usually quoted as 10: worked from the block sizes of
// Technical Information Sheet 9. An inner leaf is cut at its corners and at its foot and top, so it
// takes some more.
TEST(PublishedLaying, BlocksToASquareMetre) {
  const Model m = plainWalls();
  const double counted = amountOf(m, "Blocks, 100 wide") / amountOf(m, "Blockwork, 100 wide");
  EXPECT_GE(counted, 9.88 - 0.05);
  EXPECT_LE(counted, 9.88 * 1.08);
}

// NAVEDTRA 14043, Builder 3 & 2, Volume 1, chapter 8, rule 38: a cubic yard of 1 : 3 mortar takes
// 38 / 4 = 9.5 sacks of cement, of a cubic foot each.
TEST(PublishedLaying, SacksOfCementToACubicYardOfMortar) {
  LayingRates laying;
  laying.mixSand = 3;
  const Model m = plainWalls(laying);
  const double yards =
      (amountOf(m, "Mortar for brickwork, 1 : 3") + amountOf(m, "Mortar for blockwork, 1 : 3")) /
      (27 * kCubicFoot);
  const double pound = 0.45359237;
  const double sacks = amountOf(m, "Cement for mortar, bags of 25 kg") * 25 / (94 * pound);
  EXPECT_NEAR(sacks / yards, 9.5, 1e-6);
  EXPECT_NEAR(amountOf(m, "Sand for mortar, loose and dry") / yards / kCubicFoot, 28.5, 1e-6);
}

// NAVEDTRA 14045, Builder Advanced, chapter 4, Table 4-5 example: 760 bricks of a face of 2 3/4 x
// 8 1/2 in with its joint, at 11.7 cubic feet of mortar to a thousand, take 8.89 and with 20 %
// waste 10.7. The table's brick is 8 x 2 1/4 x 3 3/4 in with joints of 1/2 in, so the joints alone
// are that: no frogs.
TEST(PublishedLaying, MortarToAThousandBricks) {
  Job job = rectangleJob(34 * 8.5 * kInch + 3.75 * kInch, 24 * 8.5 * kInch + 3.75 * kInch);
  job.walls.brickLength = 8 * kInch;
  job.walls.brickHeight = 2.25 * kInch;
  job.walls.joint = 0.5 * kInch;
  job.walls.outerLeaf = 3.75 * kInch;
  const Model m = buildModel(job);
  const double thousand =
      amountOf(m, "Mortar for brickwork, 1 : 5") / amountOf(m, "Facing bricks") * 1000;
  EXPECT_NEAR(thousand / kCubicFoot, 11.7, 0.25);
  EXPECT_NEAR(thousand / kCubicFoot * 0.760, 8.89, 0.2);
  EXPECT_NEAR(8.89 * (1 + waste::kMortar), 10.7, 0.05);
}

}  // namespace
}  // namespace published
