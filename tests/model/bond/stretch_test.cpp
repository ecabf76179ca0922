// One stretch laid dry: does every length get a bond, and whole bricks where they come out?
#include "model/bond/stretch.h"

#include <cmath>

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace model {
namespace {

const BrickSizes kBricks;

// Between the stations of a pier: a joint more than its faces.
double pier(double millimetres) { return millimetres / 1000 + kBricks.joint; }

// The lengths of one course's bricks, from station to station.
std::vector<double> bricksOf(const StretchFit& fit, size_t course, double length) {
  std::vector<double> bricks;
  double from = kBricks.joint / 2;
  for (const CrossJoint& joint : fit.joints[course]) {
    bricks.push_back(joint.at - joint.width / 2 - from);
    from = joint.at + joint.width / 2;
  }
  bricks.push_back(length - kBricks.joint / 2 - from);
  return bricks;
}

TEST(Stretch, OfThreeBricksIsLaidInThreeAndInTwoAndTwoHalves) {
  const double length = pier(665);
  const StretchFit fit = fitStretch(kBricks, length);
  ASSERT_TRUE(fit.regular);
  EXPECT_EQ(fit.halfBricks, 6);
  EXPECT_FALSE(fit.odd);
  EXPECT_NEAR(fit.joint, 0.010, 1e-9);
  const std::vector<double> one = bricksOf(fit, 0, length), two = bricksOf(fit, 1, length);
  ASSERT_EQ(one.size(), 3u);
  for (const double brick : one) EXPECT_NEAR(brick, 0.215, 1e-9);
  ASSERT_EQ(two.size(), 4u);
  EXPECT_NEAR(two.front(), 0.1025, 1e-9);
  EXPECT_NEAR(two.back(), 0.1025, 1e-9);
  EXPECT_NEAR(two[1], 0.215, 1e-9);
}

TEST(Stretch, OfTwoAndAHalfBricksHasAHalfAtOneEndAndThenAtTheOther) {
  const double length = pier(552.5);
  const StretchFit fit = fitStretch(kBricks, length);
  ASSERT_TRUE(fit.regular);
  EXPECT_TRUE(fit.odd);
  EXPECT_NEAR(bricksOf(fit, 0, length).back(), 0.1025, 1e-9);
  EXPECT_NEAR(bricksOf(fit, 1, length).front(), 0.1025, 1e-9);
}

// Eleven joints of eight bricks and a bit: 16 over is 1.5 a joint.
TEST(Stretch, OpensAndClosesTheJointsBetweenTheirLimits) {
  const StretchFit wide = fitStretch(kBricks, pier(24 * 112.5 - 10 + 16));
  ASSERT_TRUE(wide.regular);
  EXPECT_NEAR(wide.joint, 0.010 + 0.016 / 11, 1e-9);
  const StretchFit tight = fitStretch(kBricks, pier(24 * 112.5 - 10 - 16));
  ASSERT_TRUE(tight.regular);
  EXPECT_NEAR(tight.joint, 0.010 - 0.016 / 11, 1e-9);
  EXPECT_FALSE(fitStretch(kBricks, pier(24 * 112.5 - 10 + 30)).regular);
  BrickSizes strict;
  strict.least = strict.most = 0.010;
  EXPECT_FALSE(fitStretch(strict, pier(24 * 112.5 - 10 + 16)).regular);
}

TEST(Stretch, ThatDoesNotComeOutIsCutInTheMiddle) {
  const double length = pier(2015 + 50);  // nine bricks and 50
  const StretchFit fit = fitStretch(kBricks, length);
  ASSERT_FALSE(fit.regular);
  EXPECT_NEAR(fit.over, 0.050 - (fit.odd ? 0.1125 : 0), 1e-9);
  for (size_t course = 0; course < 2; ++course) {
    const std::vector<double> bricks = bricksOf(fit, course, length);
    ASSERT_FALSE(fit.cuts[course].empty());
    // Whole bricks or halves at both ends: the cut ones are not beside the jambs.
    for (const double end : {bricks.front(), bricks.back()})
      EXPECT_TRUE(std::fabs(end - 0.215) < 1e-6 || std::fabs(end - 0.1025) < 1e-6) << end;
  }
}

TEST(Stretch, AskedForTheOtherParityBreaksABondThatWouldComeOut) {
  const StretchFit fit = fitStretch(kBricks, pier(2015), true, StretchEnds::Pier);
  EXPECT_FALSE(fit.regular);
  EXPECT_TRUE(fit.odd);
  EXPECT_GE(fit.lap, kBricks.leastLap());
}

TEST(Stretch, NarrowerThanABrickHasNoBond) {
  const StretchFit fit = fitStretch(kBricks, 0.09);
  EXPECT_FALSE(fit.regular);
  EXPECT_TRUE(fit.joints[0].empty());
  EXPECT_TRUE(fit.joints[1].empty());
}

// Any length from under two bricks up; from three on also when the courses must meet the other way.
RC_GTEST_PROP(Stretch, IsFilledWithoutGapsOrSliversAndLaps, (bool asked, bool odd)) {
  const double length = *rc::gen::inRange(asked ? 6750 : 4000, 90000) / 1e4;
  const StretchFit fit =
      asked ? fitStretch(kBricks, length, odd, StretchEnds::Pier) : fitStretch(kBricks, length);
  RC_ASSERT(!asked || fit.odd == odd);
  RC_ASSERT(fit.lap >= kBricks.leastLap() - 0.001);
  for (size_t course = 0; course < 2; ++course) {
    double sum = kBricks.joint;
    for (const double brick : bricksOf(fit, course, length)) {
      RC_ASSERT(brick > kBricks.leastCut - 0.0015);
      RC_ASSERT(brick < kBricks.brick + 0.0015);
      sum += brick;
    }
    for (const CrossJoint& joint : fit.joints[course]) {
      RC_ASSERT(joint.width > kBricks.least - 1e-6);
      RC_ASSERT(joint.width < kBricks.most + 1e-6);
      sum += joint.width;
    }
    RC_ASSERT(std::fabs(sum - length) < 1e-9);
  }
}

}  // namespace
}  // namespace model
