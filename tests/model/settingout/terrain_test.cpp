#include <cmath>
#include <random>

#include <gtest/gtest.h>

#include "model/settingout/delaunay.h"
#include "model/settingout/terrain.h"
#include "tests/support/demo_job.h"

namespace {

using model::Job;
using model::Vec2;

double doubleArea(const std::vector<Vec2>& p, const std::array<unsigned, 3>& t) {
  return model::cross(p[t[1]] - p[t[0]], p[t[2]] - p[t[0]]);
}

// Circumcircle by the textbook formula, independent of the predicate under test.
void expectEmptyCircles(const std::vector<Vec2>& p, const model::Triangles& triangles) {
  for (const auto& t : triangles) {
    const Vec2 a = p[t[0]], b = p[t[1]] - a, c = p[t[2]] - a;
    const double d = 2 * (b.x * c.y - b.y * c.x);
    const double bb = b.x * b.x + b.y * b.y, cc = c.x * c.x + c.y * c.y;
    const Vec2 centre{(c.y * bb - b.y * cc) / d, (b.x * cc - c.x * bb) / d};
    const double radius = std::hypot(centre.x, centre.y);
    for (size_t i = 0; i < p.size(); ++i) {
      const double distance = std::hypot(p[i].x - a.x - centre.x, p[i].y - a.y - centre.y);
      EXPECT_GE(distance, radius * (1 - 1e-6));
    }
  }
}

TEST(Delaunay, NoPointLiesInsideATrianglesCircle) {
  std::mt19937 random(7);
  for (int round = 0; round < 60; ++round) {
    std::vector<Vec2> points;
    const int n = 3 + round;
    for (int i = 0; i < n; ++i) {
      points.push_back({static_cast<double>(random() % 100000) / 1000,
                        static_cast<double>(random() % 100000) / 1000});
    }
    const auto triangles = model::delaunay(points);
    expectEmptyCircles(points, triangles);
    for (const auto& t : triangles) EXPECT_GT(doubleArea(points, t), 0);
  }
}

TEST(Delaunay, GridsOfPointsInLineAreCoveredOnceAndEveryPointIsUsed) {
  std::vector<Vec2> points;
  for (int i = 0; i < 7; ++i) {
    for (int j = 0; j < 5; ++j) points.push_back({i * 2.0, j * 3.0});
  }
  const auto triangles = model::delaunay(points);
  double twice = 0;
  std::vector<bool> used(points.size(), false);
  for (const auto& t : triangles) {
    twice += doubleArea(points, t);
    for (const unsigned i : t) used[i] = true;
  }
  EXPECT_NEAR(twice / 2, 12.0 * 12.0, 1e-9);
  EXPECT_EQ(triangles.size(), 2u * 6 * 4);
  for (size_t i = 0; i < used.size(); ++i) EXPECT_TRUE(used[i]) << i;
  expectEmptyCircles(points, triangles);
}

TEST(Delaunay, PointsOnOneLineGiveNoTriangles) {
  EXPECT_TRUE(model::delaunay({{0, 0}, {1, 1}, {2, 2}, {5, 5}}).empty());
  EXPECT_TRUE(model::delaunay({{0, 0}, {1, 1}}).empty());
}

TEST(Terrain, PassesExactlyThroughEverySpotLevel) {
  const Job job = test_support::demoJob("orchard-house");
  const auto terrain = model::deriveTerrain(job);
  for (const auto& spot : job.site.spots) {
    EXPECT_NEAR(terrain.levelAt(spot.at), spot.level, 1e-12);
  }
}

TEST(Terrain, CoversTheBoundary) {
  for (const auto& name : test_support::demoNames()) {
    const auto terrain = model::deriveTerrain(test_support::demoJob(name));
    double twice = 0;
    for (size_t t = 0; t < terrain.triangles.size(); ++t) {
      const auto& [i, j, k] = terrain.triangles[t];
      const Vec2 a{terrain.points[i]}, b{terrain.points[j]}, c{terrain.points[k]};
      twice += model::cross(b - a, c - a);
      for (const unsigned p : {i, j, k}) {
        EXPECT_NEAR(terrain.planeOf(t).at(Vec2{terrain.points[p]}), terrain.points[p].z, 1e-12);
      }
    }
    EXPECT_GE(twice / 2, model::signedArea(terrain.boundary) - 1e-9) << name;
  }
}

TEST(Terrain, IsLevelWithoutSpotLevels) {
  const auto terrain = model::deriveTerrain(test_support::demoJob("smallest"));
  EXPECT_DOUBLE_EQ(terrain.levelAt({3, 2}), -0.150);
  EXPECT_DOUBLE_EQ(terrain.levelAt({500, -70}), -0.150);
}

TEST(Terrain, BoundaryCornersTakeTheMeanOfTheSpotsByNearness) {
  Job job = test_support::demoJob("smallest");
  job.site.boundary = {{0, 0}, {30, 0}, {30, 30}, {0, 30}};
  job.site.spots = {{{3, 0}, 1.0}, {{0, 6}, 2.0}};
  // At the first corner: weights 1/9 and 1/36, so (4 x 1 + 1 x 2) / 5.
  EXPECT_NEAR(model::deriveTerrain(job).levelAt({0, 0}), 1.2, 1e-12);
}

TEST(Terrain, OutsideTheTrianglesItGoesOnFromTheNearestPoint) {
  Job job = test_support::demoJob("smallest");
  job.site.boundary = {{0, 0}, {10, 0}, {10, 10}, {0, 10}};
  job.site.spots = {{{0, 0}, 0}, {{10, 0}, 1}, {{10, 10}, 1}, {{0, 10}, 0}};
  const auto terrain = model::deriveTerrain(job);
  EXPECT_NEAR(terrain.levelAt({4, -3}), 0.4, 1e-12);
  EXPECT_NEAR(terrain.levelAt({25, 5}), 1.0, 1e-12);
}

TEST(Terrain, WithoutABoundaryTheSiteIsEightMetresRoundEverything) {
  Job job = test_support::demoJob("smallest");
  const auto boundary = model::siteBoundary(job);
  EXPECT_NEAR(model::signedArea(boundary), (6.74 + 16) * (4.49 + 16), 1e-9);
  model::StandingBuilding shed;
  shed.outline = {{10, 0}, {12, 0}, {12, 2}, {10, 2}};
  job.site.buildings.push_back(shed);
  EXPECT_NEAR(model::signedArea(model::siteBoundary(job)), (12 + 16) * (4.49 + 16), 1e-9);
}

}  // namespace
