#include "model/geometry/strata.h"

#include <gtest/gtest.h>

#include <random>

#include "model/geometry/check_solid.h"

namespace model {
namespace {

std::vector<PlanCut> squareCuts(double low, double high) {
  return {{{low, low}, {high, low}},
          {{high, low}, {high, high}},
          {{high, high}, {low, high}},
          {{low, high}, {low, low}}};
}

PlanMesh grid(int n) {
  std::vector<PlanCut> cuts;
  for (int i = 0; i <= n; ++i) {
    cuts.push_back({{double(i), 0}, {double(i), double(n)}});
    cuts.push_back({{0, double(i)}, {double(n), double(i)}});
  }
  return cutPlan(cuts);
}

TEST(Strata, OneThingOverTheWholePlanIsABox) {
  const PlanMesh mesh = grid(3);
  Strata strata(mesh);
  for (std::uint32_t c = 0; c < mesh.cells.size(); ++c) strata.add(0, c, {0, 0, 0}, {2, 2, 2});
  const auto solids = strata.solids();
  ASSERT_EQ(solids.size(), 1u);
  EXPECT_EQ(solidFault(solids[0]), "");
  EXPECT_NEAR(volume(solids[0]), 18.0, 1e-12);
  EXPECT_NEAR(surfaceArea(solids[0]), 18.0 + 24.0, 1e-12);
}

TEST(Strata, LayersOnOneAnotherOfOneThingHaveNoFaceBetweenThem) {
  const PlanMesh mesh = grid(1);
  Strata strata(mesh);
  for (std::uint32_t c = 0; c < mesh.cells.size(); ++c) {
    strata.add(0, c, {1, 1, 1}, {2, 2, 2});
    strata.add(0, c, {0, 0, 0}, {1, 1, 1});
  }
  const Solid solid = strata.solids()[0];
  EXPECT_EQ(solidFault(solid), "");
  EXPECT_NEAR(surfaceArea(solid), 10.0, 1e-12);
}

TEST(Strata, AWedgeClosesWhereItsThicknessRunsOut) {
  const PlanMesh mesh = cutPlan(squareCuts(0, 1));
  Strata strata(mesh);
  for (std::uint32_t c = 0; c < mesh.cells.size(); ++c) {
    CornerLevels top{};
    for (size_t k = 0; k < 3; ++k) top[k] = mesh.points[mesh.cells[c].corners[k]].x;
    strata.add(0, c, {0, 0, 0}, top);
  }
  const Solid solid = strata.solids()[0];
  EXPECT_EQ(solidFault(solid), "");
  EXPECT_NEAR(volume(solid), 0.5, 1e-12);
}

TEST(Strata, BodiesThatMeetAtACornerOnlyAreStillClosed) {
  const PlanMesh mesh = grid(2);
  Strata strata(mesh);
  for (std::uint32_t c = 0; c < mesh.cells.size(); ++c) {
    const Vec2 p = mesh.faces[mesh.cells[c].face].inside;
    if ((p.x > 1) == (p.y > 1)) strata.add(0, c, {0, 0, 0}, {1, 1, 1});
  }
  const Solid solid = strata.solids()[0];
  EXPECT_EQ(solidFault(solid), "");
  EXPECT_NEAR(volume(solid), 2.0, 1e-12);
}

TEST(Strata, BodiesThatMeetAlongALevelEdgeOnlyAreStillClosed) {
  const PlanMesh mesh = grid(2);
  Strata strata(mesh);
  for (std::uint32_t c = 0; c < mesh.cells.size(); ++c) {
    const Vec2 p = mesh.faces[mesh.cells[c].face].inside;
    const double z = p.x > 1 ? 1 : 0;
    strata.add(0, c, {z, z, z}, {z + 1, z + 1, z + 1});
  }
  const Solid solid = strata.solids()[0];
  EXPECT_EQ(solidFault(solid), "");
  EXPECT_NEAR(volume(solid), 4.0, 1e-12);
}

TEST(Strata, RandomStacksAreClosedAndKeepTheirVolume) {
  for (unsigned seed = 0; seed < 200; ++seed) {
    std::mt19937 random(seed);
    std::vector<PlanCut> cuts = squareCuts(0, 10);
    const auto number = [&] { return std::uniform_real_distribution<double>(0, 10)(random); };
    for (int i = 0; i < 12; ++i) cuts.push_back({{number(), number()}, {number(), number()}});
    const PlanMesh mesh = cutPlan(cuts);
    Strata strata(mesh);
    // Per face three level layers, given to three things at random.
    std::vector<double> expected(3, 0.0);
    std::vector<std::array<unsigned, 4>> plan(mesh.faces.size());
    for (auto& p : plan) {
      for (auto& v : p) v = std::uniform_int_distribution<unsigned>(0, 3)(random);
    }
    for (std::uint32_t c = 0; c < mesh.cells.size(); ++c) {
      const auto& p = plan[mesh.cells[c].face];
      double z = p[3];
      for (unsigned layer = 0; layer < 3; ++layer) {
        const double top = z + 0.5 * p[layer];
        if (p[layer] < 3) strata.add(p[layer], c, {z, z, z}, {top, top, top});
        z = top;
      }
    }
    for (size_t f = 0; f < mesh.faces.size(); ++f) {
      for (unsigned layer = 0; layer < 3; ++layer) {
        if (plan[f][layer] < 3) {
          expected[plan[f][layer]] += 0.5 * plan[f][layer] * mesh.faces[f].area;
        }
      }
    }
    const auto solids = strata.solids();
    for (size_t i = 0; i < solids.size(); ++i) {
      if (solids[i].empty()) continue;
      ASSERT_EQ(solidFault(solids[i]), "") << seed;
      ASSERT_NEAR(volume(solids[i]), expected[i], 1e-9) << seed;
    }
  }
}

}  // namespace
}  // namespace model
