#include "model/geometry/polygon.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "tests/support/random_plans.h"

namespace model {
namespace {

const Polygon kSquare{{0, 0}, {2, 0}, {2, 2}, {0, 2}};

Region square(double x, double y, double side) {
  return {{{x, y}, {x + side, y}, {x + side, y + side}, {x, y + side}}, {}};
}

TEST(Polygon, AreaIsSignedByTheWayRound) {
  EXPECT_EQ(signedArea(kSquare), 4);
  EXPECT_EQ(signedArea({{0, 0}, {0, 2}, {2, 2}, {2, 0}}), -4);
}

TEST(Polygon, AreaKeepsItsDigitsFarFromTheDatum) {
  EXPECT_NEAR(signedArea(test::moved(kSquare, {4.5e5, 2.5e6})), 4, 1e-8);
}

TEST(Polygon, NamesTheEdgesThatCross) {
  const auto crossing = crossingEdges({{0, 0}, {2, 2}, {2, 0}, {0, 2}});
  ASSERT_TRUE(crossing);
  EXPECT_EQ(*crossing, (std::array<size_t, 2>{0, 2}));
}

TEST(Polygon, NamesAnEdgeThatOnlyTouchesAnother) {
  EXPECT_TRUE(crossingEdges({{0, 0}, {4, 0}, {4, 4}, {2, 0}, {0, 4}}));
}

TEST(Polygon, NamesAnEdgeThatFoldsBack) {
  EXPECT_TRUE(crossingEdges({{0, 0}, {4, 0}, {2, 0}, {2, 2}}));
}

TEST(Polygon, NamesAnEdgeOfNoLength) {
  EXPECT_TRUE(crossingEdges({{0, 0}, {4, 0}, {4, 0}, {2, 2}}));
}

TEST(Polygon, LetsPointsInLineStand) {
  EXPECT_FALSE(crossingEdges({{0, 0}, {1, 0}, {2, 0}, {2, 2}, {1, 2}, {0, 2}}));
}

TEST(Polygon, ContainsItsOutlineWithinTheTolerance) {
  EXPECT_TRUE(contains(kSquare, {1, 1}));
  EXPECT_TRUE(contains(kSquare, {2, 1}));
  EXPECT_TRUE(contains(kSquare, {2.0009, 1}, 0.001));
  EXPECT_FALSE(contains(kSquare, {2.0011, 1}, 0.001));
}

TEST(Polygon, HoldsNothingInItsHoleButItsRim) {
  const Region frame = ring(kSquare, {{0.5, 0.5}, {1.5, 0.5}, {1.5, 1.5}, {0.5, 1.5}});
  EXPECT_FALSE(contains(frame, {1, 1}));
  EXPECT_TRUE(contains(frame, {0.5, 1}));
  EXPECT_TRUE(contains(frame, {0.25, 1}));
  EXPECT_EQ(area(frame), 3);
}

TEST(Polygon, OffsetMovesEveryEdgeByItsOwnDistance) {
  const Polygon moved = offsetMitred(kSquare, {0.1, 0.2, 0.3, -0.4});
  EXPECT_EQ(moved[0], Vec2(-0.4, 0.1));
  EXPECT_EQ(moved[1], Vec2(1.8, 0.1));
  EXPECT_NEAR(moved[2].y, 1.7, 1e-15);
  EXPECT_NEAR(moved[3].x, -0.4, 1e-15);
}

TEST(Polygon, OffsetKeepsCornersInLineAtTheirPlace) {
  const Polygon moved = offsetMitred({{0, 0}, {1, 0}, {2, 0}, {2, 2}, {0, 2}}, 0.25);
  EXPECT_EQ(moved[1], Vec2(1, 0.25));
}

TEST(Polygon, OffsetStandsOffEveryEdgeOnRandomPlans) {
  test::Random random(4);
  for (int round = 0; round < 500; ++round) {
    const Polygon plan = test::anyPlan(random, 3 + round % 8, 20);
    const Polygon moved = offsetMitred(plan, 0.05);
    for (size_t i = 0; i < plan.size(); ++i) {
      const Vec2 a = plan[i], b = plan[(i + 1) % plan.size()];
      const double length = std::hypot(b.x - a.x, b.y - a.y);
      EXPECT_NEAR(cross(b - a, moved[i] - a) / length, 0.05, 1e-9);
      EXPECT_NEAR(cross(b - a, moved[(i + 1) % plan.size()] - a) / length, 0.05, 1e-9);
    }
  }
}

TEST(Booleans, UniteNeighboursIntoOne) {
  const Regions both = unite({square(0, 0, 1)}, {square(1, 0, 1)});
  ASSERT_EQ(both.size(), 1u);
  EXPECT_EQ(area(both), 2);
}

TEST(Booleans, SubtractTheMiddleIntoAHole) {
  const Regions frame = subtract({square(0, 0, 3)}, {square(1, 1, 1)});
  ASSERT_EQ(frame.size(), 1u);
  ASSERT_EQ(frame[0].holes.size(), 1u);
  EXPECT_EQ(area(frame), 8);
  EXPECT_GT(signedArea(frame[0].outer), 0);
  EXPECT_LT(signedArea(frame[0].holes[0]), 0);
}

TEST(Booleans, KeepAnIslandInAHoleAsARegionOfItsOwn) {
  const Regions frame = subtract({square(0, 0, 5)}, {square(1, 1, 3)});
  const Regions all = unite(frame, {square(2, 2, 1)});
  ASSERT_EQ(all.size(), 2u);
  EXPECT_EQ(area(all), 25 - 9 + 1);
}

TEST(Booleans, GiveGivenPointsBackExactly) {
  const Polygon given{{0.1234567891, 0}, {2.3456789012, 0.1}, {1.7, 1.9876543217}};
  const Regions same = intersect({{given, {}}}, {square(-5, -5, 20)});
  ASSERT_EQ(same.size(), 1u);
  for (const Vec2& p : same[0].outer)
    EXPECT_NE(std::find(given.begin(), given.end(), p), given.end());
}

TEST(Booleans, DropSlivers) {
  EXPECT_TRUE(subtract({square(0, 0, 1)}, {square(0.000004, -1, 3)}).empty());
  EXPECT_FALSE(subtract({square(0, 0, 1)}, {square(0.001, -1, 3)}).empty());
}

TEST(Booleans, KeepPointsInLine) {
  const Regions cut =
      intersect({{{{0, 0}, {1, 0}, {2, 0}, {2, 2}, {0, 2}}, {}}}, {square(0, 0, 9)});
  ASSERT_EQ(cut.size(), 1u);
  EXPECT_EQ(cut[0].outer.size(), 5u);
}

TEST(Booleans, AddUpOnRandomPlans) {
  test::Random random(9);
  for (int round = 0; round < 300; ++round) {
    const Regions a{{test::anyPlan(random, 3 + round % 9, 10), {}}};
    const Regions b{{test::anyPlan(random, 3 + round % 7, 10), {}}};
    const double common = area(intersect(a, b));
    EXPECT_NEAR(area(unite(a, b)), area(a) + area(b) - common, 1e-3);
    EXPECT_NEAR(area(subtract(a, b)), area(a) - common, 1e-3);
  }
}

}  // namespace
}  // namespace model
