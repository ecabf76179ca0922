#include <cmath>
#include <random>
#include <set>

#include <gtest/gtest.h>

#include "model/walls/elevation.h"

namespace {

using model::fromRectangles;
using model::Rect;

TEST(Elevation, APlainWallIsOneRectangleAndNoMore) {
  const auto regions = fromRectangles({{0, 0, 4, 2}}, {});
  ASSERT_EQ(regions.size(), 1u);
  EXPECT_EQ(regions[0].outer.size(), 4u);
  EXPECT_DOUBLE_EQ(model::area(regions), 8);
}

TEST(Elevation, AWindowIsAHoleAndADoorANotch) {
  const auto regions = fromRectangles({{0, 0, 6, 2.4}}, {{1, 0, 2, 2.1}, {3, 1, 4, 2}});
  ASSERT_EQ(regions.size(), 1u);
  EXPECT_EQ(regions[0].outer.size(), 8u);
  ASSERT_EQ(regions[0].holes.size(), 1u);
  EXPECT_LT(model::signedArea(regions[0].holes[0]), 0);
  EXPECT_NEAR(model::area(regions), 6 * 2.4 - 2.1 - 1, 1e-12);
}

TEST(Elevation, AnOpeningOfFullHeightPartsTheWall) {
  EXPECT_EQ(fromRectangles({{0, 0, 6, 1}}, {{2, -1, 3, 2}}).size(), 2u);
}

TEST(Elevation, SteppedFoundationsGiveOneSteppedPiece) {
  const auto regions = fromRectangles({{0, -1.2, 3, 0}, {3, -0.975, 7, 0}}, {});
  ASSERT_EQ(regions.size(), 1u);
  EXPECT_EQ(regions[0].outer.size(), 6u);
  EXPECT_NEAR(model::area(regions), 3 * 1.2 + 4 * 0.975, 1e-12);
}

TEST(Elevation, NothingLeftIsNothing) {
  EXPECT_TRUE(fromRectangles({{0, 0, 1, 1}}, {{-1, -1, 2, 2}}).empty());
  EXPECT_TRUE(fromRectangles({}, {{0, 0, 1, 1}}).empty());
  EXPECT_TRUE(fromRectangles({}, {}).empty());
}

TEST(Elevation, PiecesThatWouldMeetInAPointDrawBackFromIt) {
  const auto regions = fromRectangles({{0, 0, 2, 2}}, {{0, 0, 1, 1}, {1, 1, 2, 2}});
  ASSERT_EQ(regions.size(), 2u);
  std::set<std::pair<double, double>> points;
  for (const auto& region : regions) {
    for (const auto& p : region.outer) EXPECT_TRUE(points.insert({p.x, p.y}).second);
  }
  EXPECT_NEAR(model::area(regions), 2, 1e-3);
}

TEST(Elevation, LevelsThatDifferByRoundingAreOneLevel) {
  const auto regions = fromRectangles({{0, 0, 4, 2.1}}, {{1, 1, 2, 2.1000000000000005}});
  ASSERT_EQ(regions.size(), 1u);
  EXPECT_TRUE(regions[0].holes.empty());
  EXPECT_EQ(regions[0].outer.size(), 8u);
}

// Area against a count of fine squares, on random rectangles with whole coordinates.
TEST(Elevation, AreasAgreeWithCountingSquares) {
  std::mt19937 random(3);
  const auto draw = [&](int most) {
    return static_cast<double>(random() % static_cast<unsigned>(most));
  };
  for (int round = 0; round < 400; ++round) {
    std::vector<Rect> add, cut;
    for (int i = 0; i < 4; ++i) {
      for (auto* list : {&add, &cut}) {
        const double s = draw(10), z = draw(10);
        list->push_back({s, z, s + 1 + draw(5), z + 1 + draw(5)});
      }
    }
    const auto inside = [](const std::vector<Rect>& list, double s, double z) {
      for (const Rect& r : list) {
        if (s > r.s0 && s < r.s1 && z > r.z0 && z < r.z1) return true;
      }
      return false;
    };
    double expected = 0;
    for (int i = 0; i < 20; ++i) {
      for (int j = 0; j < 20; ++j) {
        if (inside(add, i + 0.5, j + 0.5) && !inside(cut, i + 0.5, j + 0.5)) expected += 1;
      }
    }
    const auto regions = fromRectangles(add, cut);
    EXPECT_NEAR(model::area(regions), expected, 0.02) << round;
    for (const auto& region : regions) {
      EXPECT_FALSE(model::crossingEdges(region.outer)) << round;
    }
  }
}

}  // namespace
