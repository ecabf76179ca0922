// Cavities, bearings, corners and surfaces as built.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <numbers>

#include "model/asbuilt/level_surface.h"
#include "tests/model/asbuilt/as_built_support.h"

namespace asbuilt_test {
namespace {

Job partialFill() {
  Job job = rectangle(8, 6);
  job.walls.cavity = 0.150;
  job.walls.insulation = 0.100;
  return job;
}

TEST(Cavity, IsWideWhereTheLeavesPartAndTellsInsulationAndTies) {
  Job job = partialFill();
  addSet(
      job,
      {faceAt("outer-leaf-back", "A-B", 1, 0.012), faceAt("outer-leaf-back", "A-B", 5, -0.004),
       faceAt("inner-leaf-front", "A-B", 1, -0.003), faceAt("inner-leaf-front", "A-B", 5, 0.006)});
  const auto built = derive(job);
  ASSERT_EQ(built.cavities.size(), 1u);
  const CavityAsBuilt& cavity = built.cavities[0];
  EXPECT_NEAR(cavity.most.width, 0.165, 1e-9);
  EXPECT_NEAR(cavity.least.width, 0.140, 1e-9);
  EXPECT_NEAR(cavity.most.s, 1, 1e-9);
  EXPECT_TRUE(cavity.insulationFits);
  EXPECT_FALSE(cavity.clearEnough);
  EXPECT_NEAR(cavity.tieLength, 0.265, 1e-9);
  EXPECT_EQ(cavity.words,
            "cavity of A-B: 140 to 165, 150 drawn; only 40 clear beside the boards at 5000 from A, "
            "50 wanted; ties must be 265 long or more to bed 50 in both leaves at 1000 from A");
  EXPECT_TRUE(anyChangeSays(built, "cavity of A-B"));
}

TEST(Cavity, TakesTheFaceWhereTheBackOfTheLeafWasNotRead) {
  Job job = partialFill();
  job.walls.insulation = 0.150;
  addSet(job, {faceAt("outer-face", "A-B", 1, -0.010), faceAt("outer-face", "A-B", 5, 0),
               faceAt("inner-face", "B-A", 5, 0)});  // 3 from A
  const auto built = derive(job);
  ASSERT_EQ(built.cavities.size(), 1u);
  ASSERT_EQ(built.cavities[0].widths.size(), 1u);  // only where both are known
  EXPECT_NEAR(built.cavities[0].widths[0].width, 0.145, 1e-9);
  EXPECT_FALSE(built.cavities[0].insulationFits);
}

TEST(Bearing, IsWhatTheLeafLeavesUnderThePlate) {
  Job job = partialFill();
  job.walls.innerLeaf = 0.100;
  job.roof.plateWidth = 0.100;
  addSet(job,
         {faceAt("inner-leaf-front", "C-D", 2, -0.012), faceAt("inner-face", "C-D", 2, 0.004)});
  const auto built = derive(job);
  ASSERT_EQ(built.bearings.size(), 1u);
  EXPECT_NEAR(built.bearings[0].leastLeaf.width, 0.084, 1e-9);
  EXPECT_NEAR(built.bearings[0].leastPlate.width, 0.084, 1e-9);
  EXPECT_TRUE(anyChangeSays(built, "84 to bear on at the least"));
}

TEST(Faces, AreSkewAndBulgeAgainstTheLineOfTheirEnds) {
  Job job = rectangle(8, 6);
  addSet(job, {faceAt("outer-face", "B-C", 1, 0.001), faceAt("outer-face", "B-C", 3, 0.015),
               faceAt("outer-face", "B-C", 5, 0.005), faceAt("outer-face", "A-B", 1, 0.004),
               faceAt("outer-face", "A-B", 5, 0.004)});
  const auto built = derive(job);
  ASSERT_EQ(built.faces.size(), 2u);
  EXPECT_EQ(built.faces[0].words, "outer face of A-B: straight and parallel to its line");
  const FaceAsBuilt& bc = built.faces[1];
  EXPECT_NEAR(bc.skew, 0.004, 1e-9);
  EXPECT_NEAR(bc.bow, 0.012, 1e-9);
  EXPECT_NEAR(bc.bowAt, 3, 1e-9);
  EXPECT_EQ(
      bc.words,
      "outer face of B-C: 4 further out at C, bulges 12 at 3000 from B: more than is allowed, "
      "ask before building on");
  EXPECT_TRUE(anyChangeSays(built, "outer face of B-C"));
}

TEST(Spans, AreWiderWhereFacingInnerFacesPart) {
  Job job = rectangle(8, 6);
  addSet(job, {faceAt("inner-face", "A-B", 1, 0.001), faceAt("inner-face", "A-B", 7, 0.004),
               faceAt("inner-face", "D-C", 1, 0.001), faceAt("inner-face", "D-C", 7, 0.005),
               faceAt("inner-face", "B-C", 2, 0.002)});
  const auto built = derive(job);
  ASSERT_EQ(built.spans.size(), 1u);
  EXPECT_NEAR(built.spans[0].least, 0.002, 1e-9);
  EXPECT_NEAR(built.spans[0].most, 0.009, 1e-9);
  EXPECT_EQ(
      built.spans[0].words,
      "A-B to C-D: 2 wider to 9 wider inside; cut joists to their own span, not to the drawing");
}

TEST(Corners, AreOpenByWhatTheirDiagonalIsLong) {
  Job job = rectangle(8, 6);
  // Corner B opened so that C swings 30 out over its 6 m.
  const double angle = std::numbers::pi / 2 + std::asin(0.030 / 6);
  const double diagonal = std::sqrt(64 + 36 - 2 * 8 * 6 * std::cos(angle));
  addSet(job, {tapeOf(ReadingKind::Diagonal, "A-C", diagonal)});
  const auto built = derive(job);
  ASSERT_EQ(built.corners.size(), 2u);  // B and D, both across it
  const CornerAsBuilt& b = built.corners[0];
  EXPECT_EQ(b.corner, 1u);
  EXPECT_TRUE(b.byTape);
  EXPECT_NEAR(b.over, 0.030, 1e-9);
  EXPECT_TRUE(says(b.words, "corner B is open: B-C swings 30 out over its 6000"));
  ASSERT_TRUE(b.hip.has_value());
  EXPECT_LT(b.hip->built, b.hip->drawn);  // the bisector of a wider corner is shorter
}

TEST(Corners, ByPositionsGiveTheSameAngleAsByTape) {
  Job job = rectangle(8, 6);
  const Vec2 c{8 + 0.030, std::sqrt(36 - 0.03 * 0.03)};
  addSet(job, {cornerAt("outer-face", "A", {0, 0}), cornerAt("outer-face", "B", {8, 0}),
               cornerAt("outer-face", "C", c)});
  const auto built = derive(job);
  ASSERT_EQ(built.corners.size(), 1u);
  EXPECT_FALSE(built.corners[0].byTape);
  EXPECT_NEAR(built.corners[0].over, 0.030, 1e-9);
}

RC_GTEST_PROP(Surface, IsExactAtEveryReadingAndNowhereOutsideThem, ()) {
  const auto seed = *rc::gen::inRange<unsigned>(0, 100000);
  test_support::Dice dice(seed);
  Job job = rectangle(20, 15);
  std::vector<Reading> rows;
  std::vector<Vec2> at;
  for (int i = 0; i < 12; ++i) {
    at.push_back({dice.real(0, 20), dice.real(0, 15)});
    Reading reading = levelAt("structural-floor", "spot", dice.real(-0.02, 0.02));
    reading.position = at.back();
    rows.push_back(reading);
  }
  addSet(job, rows);
  const auto built = derive(job);
  const LevelSurface surface = levelSurface(built.deviations, "structural-floor:0");
  double low = 1, high = -1;
  for (size_t i = 0; i < at.size(); ++i) {
    const auto there = surface.at(at[i]);
    RC_ASSERT(there.has_value());
    RC_ASSERT(std::abs(*there - built.deviations[i].off) < 1e-6);
    low = std::min(low, built.deviations[i].off);
    high = std::max(high, built.deviations[i].off);
  }
  RC_ASSERT(!surface.at({-0.5, 7}).has_value());
  const LevelGrid grid = gridOf(surface, 0.25);
  RC_ASSERT(grid.off.size() == grid.columns * grid.rows);
  size_t inside = 0;
  for (const auto& off : grid.off) {
    if (!off) continue;
    ++inside;
    RC_ASSERT(*off > low - 1e-9 && *off < high + 1e-9);
  }
  RC_ASSERT(inside > 0u);
}

TEST(Surface, NeedsThreePlacesThatAreNotInLine) {
  Job job = rectangle(8, 6);
  addSet(job, {levelAt("damp-course", "A", 0.001), levelAt("damp-course", "B", 0.002)});
  EXPECT_TRUE(levelSurface(derive(job).deviations, "damp-course").triangles.empty());
  EXPECT_TRUE(gridOf(levelSurface(derive(job).deviations, "damp-course"), 0.1).off.empty());
}

}  // namespace
}  // namespace asbuilt_test
