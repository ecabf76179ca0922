// Roofs worked by hand, gables above all, and what holds for every roof.
#include "model/geometry/skeleton.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "tests/support/random_plans.h"

namespace model {
namespace {

const Polygon kOblong{{0, 0}, {10, 0}, {10, 6}, {0, 6}};
const Polygon kL{{0, 0}, {10, 0}, {10, 5}, {5, 5}, {5, 10}, {0, 10}};

std::vector<bool> gablesOn(const Polygon& outline, const std::vector<size_t>& edges) {
  std::vector<bool> gable(outline.size(), false);
  for (const size_t i : edges) gable[i] = true;
  return gable;
}

Skeleton roofOver(const Polygon& outline, const std::vector<size_t>& gables = {}) {
  const SkeletonResult result = roofSkeleton(outline, gablesOn(outline, gables));
  EXPECT_EQ(result.refusal, "");
  return result.skeleton.value_or(Skeleton{});
}

std::map<size_t, double> areas(const Skeleton& roof) {
  std::map<size_t, double> result;
  for (const RoofFace& face : roof.faces) result[face.edge] = signedArea(face.plan);
  return result;
}

bool hasLine(const Skeleton& roof, RoofLineKind kind, Vec2 a, Vec2 b, double runA, double runB) {
  const auto close = [](const Vec2& p, const Vec2& q) {
    return std::abs(p.x - q.x) < 1e-9 && std::abs(p.y - q.y) < 1e-9;
  };
  return std::any_of(roof.lines.begin(), roof.lines.end(), [&](const RoofLine& l) {
    if (l.kind != kind) return false;
    return (close(l.a, a) && close(l.b, b) && std::abs(l.runA - runA) < 1e-9 &&
            std::abs(l.runB - runB) < 1e-9) ||
           (close(l.a, b) && close(l.b, a) && std::abs(l.runA - runB) < 1e-9 &&
            std::abs(l.runB - runA) < 1e-9);
  });
}

std::map<RoofLineKind, int> kinds(const Skeleton& roof) {
  std::map<RoofLineKind, int> result;
  for (const RoofLine& line : roof.lines) ++result[line.kind];
  return result;
}

// Everything that must be so on any roof.
void expectSoundRoof(const Polygon& outline, const Skeleton& roof) {
  double sum = 0;
  Regions together;
  for (const RoofFace& face : roof.faces) {
    sum += signedArea(face.plan);
    EXPECT_FALSE(crossingEdges(face.plan)) << "face over edge " << face.edge;
    EXPECT_LT(area(intersect(together, {{face.plan, {}}})), 1e-4);
    together = unite(together, {{face.plan, {}}});
    const Vec2 a = outline[face.edge], b = outline[(face.edge + 1) % outline.size()];
    EXPECT_EQ(face.plan[0], a);
    EXPECT_EQ(face.plan[1], b);
    const double length = std::hypot(b.x - a.x, b.y - a.y);
    for (size_t k = 0; k < face.plan.size(); ++k) {
      EXPECT_NEAR(face.run[k], cross(b - a, face.plan[k] - a) / length, 1e-7);
      EXPECT_GE(face.run[k], 0);
    }
  }
  EXPECT_NEAR(sum, signedArea(outline), 1e-8 * (1 + sum));
  EXPECT_LT(area(subtract({{outline, {}}}, together)), 1e-3);
}

// Each roof line is an edge of both its faces, at the same heights: the roof has no steps.
void expectLinesShared(const Skeleton& roof) {
  const auto heightAt = [&](size_t edge, const Vec2& p) -> double {
    for (const RoofFace& face : roof.faces)
      for (size_t k = 0; face.edge == edge && k < face.plan.size(); ++k)
        if (face.plan[k] == p) return face.run[k];
    return -1;
  };
  for (const RoofLine& line : roof.lines)
    for (const size_t face : {line.faceA, line.faceB}) {
      EXPECT_EQ(heightAt(face, line.a), line.runA);
      EXPECT_EQ(heightAt(face, line.b), line.runB);
    }
}

TEST(Skeleton, GivesAnOblongFourHipsAndARidge) {
  const Skeleton roof = roofOver(kOblong);
  EXPECT_TRUE(hasLine(roof, RoofLineKind::Ridge, {3, 3}, {7, 3}, 3, 3));
  EXPECT_TRUE(hasLine(roof, RoofLineKind::Hip, {0, 0}, {3, 3}, 0, 3));
  EXPECT_EQ(kinds(roof),
            (std::map<RoofLineKind, int>{
                {RoofLineKind::Ridge, 1}, {RoofLineKind::Hip, 4}, {RoofLineKind::Eaves, 4}}));
}

TEST(Skeleton, BringsASquareToOnePoint) {
  const Skeleton roof = roofOver({{0, 0}, {8, 0}, {8, 8}, {0, 8}});
  EXPECT_EQ(kinds(roof)[RoofLineKind::Hip], 4);
  EXPECT_EQ(kinds(roof)[RoofLineKind::Ridge], 0);
  for (const RoofFace& face : roof.faces) EXPECT_EQ(face.plan.size(), 3u);
}

TEST(Skeleton, BringsRegularPlansToOnePoint) {
  for (int corners = 3; corners <= 24; ++corners) {
    const Skeleton roof = roofOver(test::regularPlan(corners, 5, 0.3));
    EXPECT_EQ(kinds(roof)[RoofLineKind::Hip], corners);
    for (const RoofFace& face : roof.faces) EXPECT_EQ(face.plan.size(), 3u) << corners;
  }
}

TEST(Skeleton, GivesAnLPlanOneValley) {
  const Skeleton roof = roofOver(kL);
  EXPECT_EQ(kinds(roof)[RoofLineKind::Valley], 1);
  EXPECT_TRUE(hasLine(roof, RoofLineKind::Valley, {5, 5}, {2.5, 2.5}, 0, 2.5));
}

TEST(Skeleton, BringsACrossOfEqualWingsTogetherInTheMiddle) {
  const Skeleton roof = roofOver(test::plusPlan(2, 3));
  EXPECT_EQ(kinds(roof)[RoofLineKind::Valley], 4);
  EXPECT_TRUE(hasLine(roof, RoofLineKind::Valley, {1, 1}, {0, 0}, 0, 1));
}

TEST(Skeleton, RunsARidgeFromGableToGable) {
  const Skeleton roof = roofOver(kOblong, {1, 3});
  EXPECT_EQ(areas(roof), (std::map<size_t, double>{{0, 30}, {2, 30}}));
  EXPECT_TRUE(hasLine(roof, RoofLineKind::Ridge, {0, 3}, {10, 3}, 3, 3));
  EXPECT_TRUE(hasLine(roof, RoofLineKind::Verge, {10, 0}, {10, 3}, 0, 3));
  EXPECT_EQ(kinds(roof)[RoofLineKind::Verge], 4);
}

TEST(Skeleton, HipsOneEndAndGablesTheOther) {
  const Skeleton roof = roofOver(kOblong, {1});
  EXPECT_EQ(areas(roof), (std::map<size_t, double>{{0, 25.5}, {2, 25.5}, {3, 9}}));
  EXPECT_TRUE(hasLine(roof, RoofLineKind::Ridge, {3, 3}, {10, 3}, 3, 3));
}

TEST(Skeleton, LeansAgainstAHighWall) {
  const Skeleton roof = roofOver(kOblong, {1, 2, 3});
  EXPECT_EQ(areas(roof), (std::map<size_t, double>{{0, 60}}));
  EXPECT_TRUE(hasLine(roof, RoofLineKind::Verge, {0, 6}, {10, 6}, 6, 6));
}

TEST(Skeleton, HipsRoundOneCornerBetweenTwoGables) {
  const Skeleton roof = roofOver(kOblong, {1, 2});
  EXPECT_EQ(areas(roof), (std::map<size_t, double>{{0, 42}, {3, 18}}));
  EXPECT_TRUE(hasLine(roof, RoofLineKind::Hip, {0, 0}, {6, 6}, 0, 6));
}

TEST(Skeleton, MeetsAGableThatIsNotSquare) {
  const Skeleton roof = roofOver({{0, 0}, {8, 0}, {10, 6}, {0, 6}}, {1});
  EXPECT_TRUE(hasLine(roof, RoofLineKind::Ridge, {3, 3}, {9, 3}, 3, 3));
  EXPECT_NEAR(areas(roof)[0], (8 + 6) / 2.0 * 3, 1e-9);
  EXPECT_NEAR(areas(roof)[2], (10 + 6) / 2.0 * 3, 1e-9);
}

TEST(Skeleton, PassesAPointInTheMiddleOfAGable) {
  const Skeleton roof = roofOver({{0, 0}, {10, 0}, {10, 2}, {10, 6}, {0, 6}}, {1, 2, 4});
  EXPECT_EQ(areas(roof), (std::map<size_t, double>{{0, 30}, {3, 30}}));
}

TEST(Skeleton, GablesTheWingOfAnL) {
  const Skeleton roof = roofOver(kL, {4});
  EXPECT_TRUE(hasLine(roof, RoofLineKind::Ridge, {2.5, 2.5}, {2.5, 10}, 2.5, 2.5));
  EXPECT_NEAR(areas(roof)[3], 2.5 * 5 + 2.5 * 2.5 / 2, 1e-9);
}

TEST(Skeleton, KeepsWallsInLineApartWithoutALineBetween) {
  const Skeleton roof = roofOver({{0, 0}, {5, 0}, {10, 0}, {10, 6}, {0, 6}});
  EXPECT_EQ(areas(roof)[0] + areas(roof)[1], 21);
  EXPECT_EQ(kinds(roof)[RoofLineKind::Hip], 4);
  for (const RoofLine& line : roof.lines)
    EXPECT_FALSE(line.faceA + line.faceB == 1 && line.faceA != line.faceB);
}

TEST(Skeleton, RefusesAGableInLineWithEaves) {
  const Polygon outline{{0, 0}, {5, 0}, {10, 0}, {10, 6}, {0, 6}};
  const SkeletonResult result = roofSkeleton(outline, gablesOn(outline, {1}));
  EXPECT_FALSE(result.skeleton);
  EXPECT_EQ(result.refusal, "{0} is a gable in line with the eaves of {1}");
  EXPECT_EQ(result.edges, (std::vector<size_t>{1, 0}));
}

TEST(Skeleton, RefusesAGableBesideAReEntrantCorner) {
  const SkeletonResult result = roofSkeleton(kL, gablesOn(kL, {3}));
  EXPECT_FALSE(result.skeleton);
  EXPECT_EQ(result.edges, (std::vector<size_t>{3, 2}));
  EXPECT_NE(result.refusal.find("wall inside the plan"), std::string::npos);
}

TEST(Skeleton, RefusesGablesThatLeaveNoSlope) {
  const SkeletonResult result = roofSkeleton(kOblong, gablesOn(kOblong, {0, 1, 2, 3}));
  EXPECT_FALSE(result.skeleton);
  EXPECT_NE(result.refusal.find("no slope covers"), std::string::npos);
}

TEST(Skeleton, TilesTheOutlineWithoutStepsOnRandomPlans) {
  test::Random random(21);
  for (int round = 0; round < 600 && !HasFailure(); ++round) {
    const Polygon plan = round % 2 ? test::anyPlan(random, 4 + round % 12, 15)
                                   : test::gridPlan(random, 2 + round % 14, round % 3 == 0, 3, 2.5);
    SCOPED_TRACE(round);
    const Skeleton roof = roofOver(plan);
    expectSoundRoof(plan, roof);
    expectLinesShared(roof);
  }
}

TEST(Skeleton, TilesTheOutlineWithoutStepsUnderRandomGables) {
  test::Random random(22);
  int roofed = 0;
  for (int round = 0; round < 3000 && !HasFailure(); ++round) {
    Polygon plan = round % 2 ? test::anyPlan(random, 3 + round % 6, 15)
                             : test::gridPlan(random, 1 + round % 9, false, 3, 2.5);
    if (round % 5 == 0) plan = test::turned(plan, 0.1 * round);
    std::vector<size_t> gables;
    for (size_t i = 1; i < plan.size(); ++i)
      if (random() % 4 == 0) gables.push_back(i);
    const SkeletonResult result = roofSkeleton(plan, gablesOn(plan, gables));
    EXPECT_NE(result.refusal, "the slopes over this outline could not be worked out");
    if (!result.skeleton) continue;
    ++roofed;
    expectSoundRoof(plan, *result.skeleton);
    expectLinesShared(*result.skeleton);
  }
  EXPECT_GT(roofed, 500);
}

}  // namespace
}  // namespace model
