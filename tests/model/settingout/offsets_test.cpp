#include "model/settingout/offsets.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include <glm/geometric.hpp>

namespace model {
namespace {

const Polygon kSquare{{0, 0}, {10, 0}, {10, 10}, {0, 10}};

TEST(ShortestBetween, IsSquareToAFacingEdge) {
  const SiteOffset offset = shortestBetween(kSquare, {{13, 2}, {20, 2}, {20, 30}, {13, 30}});
  EXPECT_NEAR(offset.distance, 3, 1e-12);
  EXPECT_NEAR(offset.from.x, 10, 1e-12);
  EXPECT_NEAR(offset.at.x, 13, 1e-12);
}

TEST(ShortestBetween, GoesFromCornerToCornerWhereNeitherFaces) {
  EXPECT_NEAR(shortestBetween(kSquare, {{13, 14}, {20, 14}, {20, 20}}).distance, 5, 1e-12);
}

TEST(ShortestBetween, IsNothingWhereTheyCross) {
  EXPECT_EQ(shortestBetween(kSquare, {{5, -5}, {6, -5}, {5.5, 20}}).distance, 0);
}

// However the two are turned, rounding must not make edges in line cross.
TEST(ShortestBetween, IsTheGapBetweenEdgesInLine) {
  for (int degree = 0; degree < 360; ++degree) {
    const double turn = degree * 3.14159265358979323846 / 180;
    const auto at = [&](double along) {
      return Vec2{std::cos(turn) * along - 49.9, std::sin(turn) * along - 31.7};
    };
    EXPECT_NEAR(shortestBetween({at(0), at(5)}, {at(-20), at(-15)}).distance, 15, 1e-9) << degree;
  }
}

RC_GTEST_PROP(ShortestBetween, noPointOfOneOutlineIsNearerToTheOther, ()) {
  const auto number = [] { return *rc::gen::inRange(-3000, 3000) / 100.0; };
  Polygon other;
  for (int i = 0; i < 3; ++i) other.push_back({number(), number()});
  const SiteOffset offset = shortestBetween(kSquare, other);
  RC_ASSERT(std::abs(glm::distance(offset.from, offset.at) - offset.distance) < 1e-9);
  for (size_t i = 0; i < other.size(); ++i) {
    const Vec2 a = other[i], b = other[(i + 1) % other.size()];
    for (int k = 0; k <= 20; ++k) {
      const Vec2 p = a + (b - a) * (k / 20.0);
      RC_ASSERT(distanceToOutline(kSquare, p) >= offset.distance - 1e-9);
    }
  }
}

TEST(DeriveOffsets, GoToEverySideAndToBuildingsThatStay) {
  Job job;
  job.site.boundary = {{-2, -3}, {14, -3}, {14, 20}, {-2, 20}};
  job.site.buildings.resize(2);
  job.site.buildings[0].name = "Wash house";
  job.site.buildings[0].outline = {{11, 0}, {13, 0}, {13, 2}, {11, 2}};
  job.site.buildings[1].name = "Shed";
  job.site.buildings[1].kind = BuildingKind::Demolish;
  job.site.buildings[1].outline = {{2, 2}, {3, 2}, {3, 3}};
  SettingOut out;
  out.outline = kSquare;
  const auto offsets = deriveOffsets(job, out);
  ASSERT_EQ(offsets.size(), 5u);
  EXPECT_NEAR(offsets[0].distance, 3, 1e-12);
  EXPECT_NEAR(offsets[1].distance, 4, 1e-12);
  EXPECT_NEAR(offsets[2].distance, 10, 1e-12);
  EXPECT_NEAR(offsets[3].distance, 2, 1e-12);
  EXPECT_EQ(offsets[4].to, "Wash house");
  EXPECT_NEAR(offsets[4].distance, 1, 1e-12);
}

TEST(DeriveOffsets, HaveNoBoundaryWhereTheJobGivesNone) {
  SettingOut out;
  out.outline = kSquare;
  EXPECT_TRUE(deriveOffsets(Job(), out).empty());
}

TEST(DeriveOffsets, AreMeasuredFromTheRender) {
  Job job;
  job.outline = {{0, 0}, {10, 0}, {10, 8}, {0, 8}};
  job.site.boundary = {{-2, -3}, {14, -3}, {14, 20}, {-2, 20}};
  job.walls.render = 0.020;
  const auto offsets = deriveOffsets(job, deriveSettingOut(job));
  ASSERT_EQ(offsets.size(), 4u);
  EXPECT_NEAR(offsets[0].distance, 2.980, 1e-9);
  EXPECT_NEAR(offsets[1].distance, 3.980, 1e-9);
  EXPECT_NEAR(offsets[0].from.y, -0.020, 1e-9);
}

}  // namespace
}  // namespace model
