#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

#include "model/geometry/check_solid.h"
#include "model/works/parts.h"
#include "model/works/scaffold_plan.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"

namespace {

using namespace model;
using test_support::demoJob;

Works scaffoldOf(const Job& job, const SettingOut& out) {
  Works works;
  buildScaffold(job, out, works);
  return works;
}

TEST(Scaffold, OfEveryJobIsClosedAndGoesAgain) {
  for (unsigned seed = 0; seed < 80; ++seed) {
    const Job job = test_support::seededJob(seed);
    for (const Element& e : scaffoldOf(job, deriveSettingOut(job)).elements) {
      EXPECT_EQ(solidFault(e.solid), "") << seed << " " << e.id;
      ASSERT_TRUE(e.removed) << e.id;
      // Ladders make way for longer ones; all else stays until the scaffold is struck.
      if (e.id.find("/ladder") == std::string::npos) {
        EXPECT_EQ(e.removed->stage.kind, StageKind::StrikeScaffold);
      }
      EXPECT_GT(e.removed->stage, e.placed.stage) << e.id;
      EXPECT_EQ(e.placed.stage.kind, StageKind::ScaffoldLift);
    }
  }
}

TEST(Scaffold, KeepsOutsideTheWallsTheStandingBuildingsAndUnderNoEaves) {
  for (unsigned seed = 0; seed < 80; ++seed) {
    const Job job = test_support::seededJob(seed);
    const SettingOut out = deriveSettingOut(job);
    const double eavesLow = out.levels.eaves - (job.roof.rafterDepth + job.roof.covering) /
                                                   std::cos(job.roof.pitch * M_PI / 180);
    for (const Element& e : scaffoldOf(job, out).elements) {
      for (const Vec3& p : e.solid.points) {
        const Vec2 at{p.x, p.y};
        ASSERT_TRUE(!contains(out.outline, at) && distanceToOutline(out.outline, at) > 0.09)
            << seed << " " << e.id;
        if (contains(out.eavesOutline, at)) {
          ASSERT_LT(p.z, eavesLow) << seed << " " << e.id;
        }
        ASSERT_TRUE(contains(out.terrain.boundary, at, 1e-6)) << seed << " " << e.id;
        for (const StandingBuilding& building : job.site.buildings) {
          if (building.kind == BuildingKind::Demolish) continue;
          Polygon outline = building.outline;
          ASSERT_FALSE(contains(outline, at)) << seed << " " << e.id;
        }
      }
    }
  }
}

TEST(Scaffold, PlatformsComeBeforeTheLiftsThatAreLaidFromThem) {
  const Job job = demoJob("orchard-house");
  const SettingOut out = deriveSettingOut(job);
  const auto all = platforms(job, out);
  ASSERT_EQ(all.size(), 4u);
  for (size_t i = 0; i < all.size(); ++i) {
    EXPECT_NEAR(all[i].level, all[i].lift.bottom - 0.150, 1e-9);
    EXPECT_GT(all[i].lift.bottom - out.levels.groundLow, 1.2);
    if (i > 0) {
      EXPECT_GE(all[i].level - all[i - 1].level, 1.0);
    }
  }
  EXPECT_EQ(all[0].lift.number, 2);
  EXPECT_EQ(all[0].lift.storey, 0);
}

TEST(Scaffold, StandardsRunWithoutAGapFromTheGroundToTheLastGuardRail) {
  const Job job = demoJob("orchard-house");
  const SettingOut out = deriveSettingOut(job);
  const auto all = platforms(job, out);
  double top = -1e9;
  bool first = true;
  for (const Element& e : scaffoldOf(job, out).elements) {
    if (e.wall != "A-B" || e.id.find("/tubes") == std::string::npos) continue;
    if (first) {
      // Feet on the stripped ground: 150 of topsoil is off, and A-B falls from -0.430 to -0.560.
      EXPECT_LT(e.underside, -0.43 - 0.150);
      EXPECT_GT(e.underside, -0.56 - 0.150 - 0.5);
    }
    top = std::max(top, e.top);
    first = false;
  }
  EXPECT_NEAR(top, all.back().level + 1.1, 1e-9);
}

TEST(Scaffold, ALadderReachesAMetreOverEveryPlatformAndMakesWayForTheNext) {
  const Job job = demoJob("orchard-house");
  const SettingOut out = deriveSettingOut(job);
  const auto all = platforms(job, out);
  std::vector<Element> ladders;
  for (const Element& e : scaffoldOf(job, out).elements) {
    if (e.wall == "A-B" && e.id.find("/ladder") != std::string::npos) ladders.push_back(e);
  }
  ASSERT_EQ(ladders.size(), all.size());
  for (size_t i = 0; i < all.size(); ++i) {
    EXPECT_NEAR(ladders[i].top, all[i].level + 1.0, 1e-9);
    EXPECT_LT(ladders[i].underside, -0.43 - 0.150);
    if (i > 0) {
      EXPECT_EQ(ladders[i - 1].removed->stage, ladders[i].placed.stage);
      EXPECT_LT(fractionAt(*ladders[i - 1].removed, {}), fractionAt(ladders[i].placed, {}));
    }
  }
  EXPECT_EQ(ladders.back().removed->stage.kind, StageKind::StrikeScaffold);
}

TEST(Scaffold, NoneIsNeededForALowWallOnALevelSite) {
  Job job = demoJob("smallest");
  job.walls.top = 1.05;
  EXPECT_TRUE(platforms(job, deriveSettingOut(job)).empty());
}

TEST(Scaffold, LeavesOutAWallWithoutRoom) {
  Job job = demoJob("smallest");
  StandingBuilding near;
  near.outline = {{0, -2}, {6.74, -2}, {6.74, -0.8}, {0, -0.8}};
  job.site.buildings.push_back(near);
  const SettingOut out = deriveSettingOut(job);
  const auto room = wallsWithRoom(job, out, scaffoldRows(job));
  ASSERT_EQ(room.size(), 4u);
  EXPECT_FALSE(room[0]);
  EXPECT_TRUE(room[2]);
}

}  // namespace
