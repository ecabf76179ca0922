#include "model/geometry/plan_mesh.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <set>

#include "model/geometry/polygon.h"

namespace model {
namespace {

std::vector<PlanCut> outlineCuts(const Polygon& polygon) {
  std::vector<PlanCut> cuts;
  for (size_t i = 0; i < polygon.size(); ++i) {
    cuts.push_back({polygon[i], polygon[(i + 1) % polygon.size()]});
  }
  return cuts;
}

double totalArea(const PlanMesh& mesh) {
  double sum = 0;
  for (const PlanFace& face : mesh.faces) sum += face.area;
  return sum;
}

// Every cell anticlockwise, and neighbours name each other over the same edge.
void expectSound(const PlanMesh& mesh) {
  for (std::uint32_t c = 0; c < mesh.cells.size(); ++c) {
    const PlanCell& cell = mesh.cells[c];
    const auto& [i, j, k] = cell.corners;
    ASSERT_GT(cross(mesh.points[j] - mesh.points[i], mesh.points[k] - mesh.points[i]), 0);
    for (size_t e = 0; e < 3; ++e) {
      if (cell.beyond[e] == kNoCell) continue;
      const PlanCell& other = mesh.cells[cell.beyond[e]];
      bool found = false;
      for (size_t f = 0; f < 3; ++f) {
        if (other.beyond[f] != c) continue;
        found |= other.corners[f] == cell.corners[(e + 1) % 3] &&
                 other.corners[(f + 1) % 3] == cell.corners[e] && other.cut[f] == cell.cut[e];
      }
      ASSERT_TRUE(found) << "cell " << c << " side " << e;
    }
  }
}

TEST(PlanMesh, SquareWithADiagonalHasTwoFaces) {
  auto cuts = outlineCuts({{0, 0}, {4, 0}, {4, 4}, {0, 4}});
  cuts.push_back({{0, 0}, {4, 4}});
  const PlanMesh mesh = cutPlan(cuts);
  expectSound(mesh);
  ASSERT_EQ(mesh.faces.size(), 2u);
  EXPECT_DOUBLE_EQ(mesh.faces[0].area, 8.0);
  EXPECT_DOUBLE_EQ(mesh.faces[1].area, 8.0);
}

TEST(PlanMesh, CrossingCutsMakeAPointWhereTheyCross) {
  auto cuts = outlineCuts({{0, 0}, {4, 0}, {4, 4}, {0, 4}});
  cuts.push_back({{0, 0}, {4, 4}});
  cuts.push_back({{0, 4}, {4, 0}});
  const PlanMesh mesh = cutPlan(cuts);
  expectSound(mesh);
  EXPECT_EQ(mesh.faces.size(), 4u);
  EXPECT_NE(std::find(mesh.points.begin(), mesh.points.end(), Vec2(2, 2)), mesh.points.end());
}

TEST(PlanMesh, AnIslandIsAFaceOfItsOwn) {
  auto cuts = outlineCuts({{0, 0}, {10, 0}, {10, 10}, {0, 10}});
  for (const PlanCut& cut : outlineCuts({{3, 3}, {6, 3}, {6, 5}, {3, 5}})) cuts.push_back(cut);
  const PlanMesh mesh = cutPlan(cuts);
  expectSound(mesh);
  ASSERT_EQ(mesh.faces.size(), 2u);
  const double small = std::min(mesh.faces[0].area, mesh.faces[1].area);
  EXPECT_NEAR(small, 6.0, 1e-12);
  EXPECT_NEAR(totalArea(mesh), 100.0, 1e-12);
}

TEST(PlanMesh, LinesOverOneAnotherAreOne) {
  auto cuts = outlineCuts({{0, 0}, {4, 0}, {4, 4}, {0, 4}});
  cuts.push_back({{1, 0}, {3, 0}});
  cuts.push_back({{2, 0}, {6, 0}});
  cuts.push_back({{0, 2}, {4, 2}});
  cuts.push_back({{1, 2 + 5e-7}, {3, 2 - 5e-7}});
  const PlanMesh mesh = cutPlan(cuts);
  expectSound(mesh);
  double inside = 0;
  for (const PlanFace& face : mesh.faces) {
    if (face.inside.x < 4) inside += face.area;
  }
  EXPECT_NEAR(inside, 16.0, 1e-5);
}

TEST(PlanMesh, MillimetrePointsStayExactlyWhereTheyAre) {
  const Polygon polygon{{0.1025, 0.3525}, {11.24, 0}, {11.2405, 6.065}};
  const PlanMesh mesh = cutPlan(outlineCuts(polygon));
  for (const Vec2& p : polygon) {
    EXPECT_NE(std::find(mesh.points.begin(), mesh.points.end(), p), mesh.points.end());
  }
}

TEST(PlanMesh, CutsOnOneLineMakeNothing) {
  EXPECT_TRUE(cutPlan({{{0, 0}, {1, 1}}, {{1, 1}, {3, 3}}}).cells.empty());
  EXPECT_TRUE(cutPlan({}).cells.empty());
}

// On a coarse grid most random cuts meet at ends, overlap or pass through each other's ends.
TEST(PlanMesh, CoversRandomCutsWithoutGapOrOverlap) {
  for (unsigned seed = 0; seed < 300; ++seed) {
    std::mt19937 random(seed);
    const bool coarse = seed % 2 == 0;
    const auto number = [&] {
      const double v = std::uniform_real_distribution<double>(0, 10)(random);
      return coarse ? std::round(v) : v;
    };
    std::vector<PlanCut> cuts = outlineCuts({{-1, -1}, {11, -1}, {11, 11}, {-1, 11}});
    for (int i = 0; i < 40; ++i) {
      cuts.push_back({{number(), number()}, {number(), number()}});
    }
    const PlanMesh mesh = cutPlan(cuts);
    expectSound(mesh);
    ASSERT_NEAR(totalArea(mesh), 144.0, 1e-9) << seed;
    // No face lies on both sides of a cut: its cells' middles are all on one.
    for (const PlanCell& cell : mesh.cells) {
      Vec2 middle{0, 0};
      for (const auto p : cell.corners) middle += mesh.points[p] / 3.0;
      for (const PlanCut& cut : cuts) {
        double low = 1e9, high = -1e9, from = 1e9, to = -1e9;
        const Vec2 along = cut.b - cut.a;
        const double length = std::hypot(along.x, along.y);
        if (length == 0) continue;
        for (const auto p : cell.corners) {
          const Vec2 d = mesh.points[p] - cut.a;
          low = std::min(low, cross(along, d) / length);
          high = std::max(high, cross(along, d) / length);
        }
        if (low > -1e-4 || high < 1e-4) continue;
        // The line goes through the cell: the cut itself must not.
        const Vec2 d = middle - cut.a;
        from = (d.x * along.x + d.y * along.y) / length;
        to = std::abs(cross(along, d)) / length;
        ASSERT_FALSE(to < 1e-6 && from > 1e-3 && from < length - 1e-3) << seed;
      }
    }
  }
}

}  // namespace
}  // namespace model
