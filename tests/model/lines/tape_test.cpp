// Diagonals, fixes and triangles.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <glm/trigonometric.hpp>

#include "tests/model/lines/lines_support.h"

namespace lines_test {
namespace {

// The two points at these distances from a and b; nothing when the arcs do not cross.
std::vector<Vec2> crossings(const Vec2& a, double fromA, const Vec2& b, double fromB) {
  const Vec2 u = b - a;
  const double d = glm::length(u);
  const double x = (fromA * fromA - fromB * fromB + d * d) / (2 * d);
  const double y2 = fromA * fromA - x * x;
  if (y2 < -1e-9) return {};
  const Vec2 along = u / d, across{-along.y, along.x};
  const double y = std::sqrt(std::max(0.0, y2));
  return {a + along * x + across * y, a + along * x - across * y};
}

TEST(Tape, RectanglesHaveTwoEqualDiagonalsAndSaidWhyThatIsNotEnough) {
  const Derived plain(rectangle(9.000, 6.630));
  const TapeChecks& tape = plain.lines.tape;
  ASSERT_EQ(tape.diagonals.size(), 2u);
  EXPECT_NEAR(tape.diagonals[0].length, std::hypot(9.000, 6.630), 1e-12);
  EXPECT_NEAR(tape.diagonals[1].length, tape.diagonals[0].length, 1e-12);
  ASSERT_GE(tape.words.size(), 2u);
  EXPECT_NE(tape.words[0].find("Equal diagonals alone prove nothing"), std::string::npos);
  EXPECT_NE(tape.words[1].find("out of square by 6.2 over the 6630 side"), std::string::npos)
      << tape.words[1];
}

TEST(Tape, OfAPlanThatIsNoRectangleSaysThatDiagonalsDiffer) {
  const Derived skew(test_support::demoJob("skew-corner"));
  const TapeChecks& tape = skew.lines.tape;
  const double difference = std::abs(tape.diagonals[0].length - tape.diagonals[1].length);
  EXPECT_NE(tape.words[0].find("meant to differ, by " + lengthText(difference)), std::string::npos)
      << tape.words[0];
}

// A lean by `over` along the far side changes the diagonals by the difference it was made from.
RC_GTEST_PROP(Tape, OutOfSquareIsWhatALeaningRectangleMeasures, ()) {
  const double a = *rc::gen::inRange(2000, 20000) / 1000.0;
  const double b = *rc::gen::inRange(2000, 20000) / 1000.0;
  const double lean = *rc::gen::inRange(-30, 31) / 1000.0;
  // Sides true, turned about A by lean / b.
  const double angle = lean / b;
  const Vec2 d{b * std::sin(angle), b * std::cos(angle)}, c = d + Vec2{a, 0};
  const double difference = glm::length(c) - glm::length(d - Vec2{a, 0});
  RC_ASSERT(std::abs(outOfSquare(difference, a, b) - lean) < 1e-4);
}

TEST(Tape, OnASlopeReadsMore) {
  EXPECT_NEAR(moreOnSlope(9, 1), 0.0554, 5e-5);
  EXPECT_NEAR(moreOnSlope(9, -1), moreOnSlope(9, 1), 1e-12);
  EXPECT_EQ(moreOnSlope(9, 0), 0);
}

TEST(Tape, TwoDistancesGiveEveryCornerBackAndCrossWell) {
  for (unsigned seed = 0; seed < 300; ++seed) {
    const Derived drawn(test_support::seededJob(seed));
    const TapeChecks& tape = drawn.lines.tape;
    std::vector<bool> set(drawn.out.corners.size(), false);
    set[drawn.out.walls[tape.base].from] = set[drawn.out.walls[tape.base].to] = true;
    for (const TapeFix& fix : tape.fixes) {
      for (const Tape& t : fix.tapes) {
        ASSERT_TRUE(set[t.from]) << seed;
        ASSERT_EQ(t.to, fix.corner);
        ASSERT_LE(t.length, drawn.job.settingOut.tape) << seed;
      }
      const Vec2 at = drawn.out.corners[fix.corner].at;
      double nearest = 1e300;
      for (const Vec2& p : crossings(drawn.out.corners[fix.tapes[0].from].at, fix.tapes[0].length,
                                     drawn.out.corners[fix.tapes[1].from].at, fix.tapes[1].length))
        nearest = std::min(nearest, glm::length(p - at));
      ASSERT_LT(nearest, 1e-6) << seed;
      ASSERT_EQ(fix.weak, fix.angle < 30 || fix.angle > 150) << seed;
      set[fix.corner] = true;
    }
    ASSERT_TRUE(std::all_of(set.begin(), set.end(), [](bool b) { return b; })) << seed;
  }
}

TEST(Tape, HouseWithAnInsideCornerIsFixedWithoutAWeakCrossing) {
  const Derived house(test_support::demoJob("orchard-house"));
  EXPECT_EQ(house.lines.tape.fixes.size(), 4u);
  for (const TapeFix& fix : house.lines.tape.fixes) {
    EXPECT_FALSE(fix.weak);
    // The first has only the base to be fixed from; the next are checked.
    EXPECT_EQ(fix.check.has_value(), &fix != &house.lines.tape.fixes.front());
  }
}

TEST(Tape, AWallLongerThanTheTapeIsSaidToBe) {
  Job job = rectangle(40, 12);
  const Derived barn(job);
  EXPECT_TRUE(barn.lines.tape.sides[0].tooLong);
  EXPECT_FALSE(barn.lines.tape.sides[1].tooLong);
  EXPECT_EQ(barn.lines.tape.base, 1u);
}

TEST(Triangles, AreTheLargestThatFit) {
  const CornerTriangle small = squareTriangle(4.490, 3.590, 30);
  EXPECT_NEAR(small.before, 4.4, 1e-9);
  EXPECT_NEAR(small.after, 3.3, 1e-9);
  EXPECT_NEAR(small.across, 5.5, 1e-9);
  // The tape ends it.
  EXPECT_NEAR(squareTriangle(20, 20, 5.2).across, 5.0, 1e-9);
  // One long and one short line: a long thin triangle checks better than a small 3-4-5.
  const CornerTriangle thin = squareTriangle(1.250, 9.000, 30);
  EXPECT_GT(thin.before * thin.after / thin.across, 0.9 * 1.2 / 1.5 * 1.1);
  EXPECT_EQ(squareTriangle(0.2, 9, 30).across, 0);
}

RC_GTEST_PROP(Triangles, OfWholeHundredsFitAndAreSquare, ()) {
  const double before = *rc::gen::inRange(0, 15000) / 1000.0;
  const double after = *rc::gen::inRange(0, 15000) / 1000.0;
  const double tape = *rc::gen::inRange(3000, 30000) / 1000.0;
  const CornerTriangle t = squareTriangle(before, after, tape);
  RC_ASSERT(t.before <= before + 1e-9 && t.after <= after + 1e-9 && t.across <= tape + 1e-9);
  RC_ASSERT(std::abs(std::hypot(t.before, t.after) - t.across) < 1e-9);
  for (const double side : {t.before, t.after, t.across})
    RC_ASSERT(std::abs(std::remainder(side, 0.1)) < 1e-9);
  if (std::min(before, after) >= 0.4) RC_ASSERT(t.across > 0);
}

// The marks lie on the two walls' lines and are as far apart as is said.
TEST(Triangles, OfEveryCornerOfEveryJobCanBeMeasured) {
  for (unsigned seed = 0; seed < 200; ++seed) {
    const Derived drawn(test_support::seededJob(seed));
    const size_t n = drawn.out.corners.size();
    ASSERT_EQ(drawn.lines.tape.corners.size(), n);
    for (const CornerTriangle& t : drawn.lines.tape.corners) {
      const WallLine& before = drawn.out.walls[(t.corner + n - 1) % n];
      const WallLine& after = drawn.out.walls[t.corner];
      ASSERT_LE(t.before, before.length + 1e-9);
      ASSERT_LE(t.after, after.length + 1e-9);
      if (t.across <= 0) continue;
      const Vec2 a = before.at(before.length - t.before), b = after.at(t.after);
      // A corner square to 0.05 degrees is measured as square.
      ASSERT_NEAR(glm::length(b - a), t.across, t.square ? 0.009 : 1e-9) << seed;
    }
  }
}

}  // namespace
}  // namespace lines_test
