#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <string>

#include <gtest/gtest.h>

#include "model/geometry/check_solid.h"
#include "model/works/parts.h"
#include "model/works/scaffold_plan.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"
#include "tests/support/solid_referee.h"

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
      // Ladders and end rails make way for what comes next; all else stays until the end.
      if (!e.id.ends_with("/ladder") && !e.id.ends_with("/end rails")) {
        EXPECT_EQ(e.removed->stage.kind, StageKind::StrikeScaffold);
      }
      EXPECT_GT(e.removed->stage, e.placed.stage) << e.id;
      EXPECT_TRUE(e.placed.stage.kind == StageKind::ScaffoldLift ||
                  e.placed.stage.kind == StageKind::ScaffoldRoof)
          << e.id;
    }
  }
}

TEST(Scaffold, IsStruckFromTheTopBoardsWithTheirRails) {
  const Job job = demoJob("orchard-house");
  std::map<std::string, std::map<double, std::set<double>>> goes;  // by wall, by level of boards
  const Works works = scaffoldOf(job, deriveSettingOut(job));
  for (const Element& e : works.elements) {
    if (!e.id.ends_with("/boards")) continue;
    const std::string rails = e.id.substr(0, e.id.size() - 6) + "tubes";
    const auto found = std::find_if(works.elements.begin(), works.elements.end(),
                                    [&](const Element& other) { return other.id == rails; });
    ASSERT_NE(found, works.elements.end()) << e.id;
    EXPECT_EQ(found->removed->begin, e.removed->begin) << e.id;
    goes[e.wall][e.underside].insert(e.removed->begin);
  }
  ASSERT_FALSE(goes.empty());
  for (const auto& [wall, levels] : goes) {
    double later = 1;
    for (const auto& [level, moments] : levels) {
      EXPECT_EQ(moments.size(), 1u) << wall << level;
      EXPECT_LT(*moments.begin(), later) << wall << level;
      later = *moments.begin();
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
  ASSERT_EQ(all.size(), 5u);
  for (size_t i = 0; i < 4; ++i) {
    EXPECT_NEAR(all[i].level, all[i].lift.bottom - 0.150, 1e-9);
    EXPECT_GT(all[i].lift.bottom - out.levels.groundLow, 1.2);
    if (i > 0) {
      EXPECT_GE(all[i].level - all[i - 1].level, 1.0);
    }
  }
  EXPECT_EQ(all[0].lift.number, 2);
  EXPECT_EQ(all[0].lift.storey, 0);
  // The last one lies at the eaves already: the roof only needs its rails.
  EXPECT_EQ(all[4].stage.kind, StageKind::ScaffoldRoof);
  EXPECT_FALSE(all[4].boards);
  EXPECT_EQ(all[4].level, all[3].level);
}

TEST(Scaffold, StandardsRunWithoutAGapFromTheGroundToTheLastGuardRail) {
  const Job job = demoJob("orchard-house");
  const SettingOut out = deriveSettingOut(job);
  const auto all = platforms(job, out);
  double top = -1e9;
  bool first = true;
  for (const Element& e : scaffoldOf(job, out).elements) {
    if (e.wall != "A-B" || !(e.id.ends_with("/tubes") || e.id.ends_with("/rails"))) continue;
    if (first) {
      // Feet on the stripped ground: 150 of topsoil is off, and A-B falls from -0.430 to -0.560.
      EXPECT_LT(e.underside, -0.43 - 0.150);
      EXPECT_GT(e.underside, -0.56 - 0.150 - 0.5);
    }
    top = std::max(top, e.top);
    first = false;
  }
  // Rails at 475 to 1425 over the boards, so that one is 950 over the edge of the covering.
  EXPECT_NEAR(top, all.back().level + 0.95 + 0.475 + 0.15, 1e-9);
  EXPECT_GE(top - 0.15, out.levels.eaves + 0.95);
}

TEST(Scaffold, ALadderReachesAMetreOverEveryPlatformAndMakesWayForTheNext) {
  const Job job = demoJob("orchard-house");
  const SettingOut out = deriveSettingOut(job);
  const auto all = platforms(job, out);
  std::vector<Element> ladders;
  for (const Element& e : scaffoldOf(job, out).elements) {
    if (e.wall == "A-B" && e.id.find("/ladder") != std::string::npos) ladders.push_back(e);
  }
  ASSERT_EQ(ladders.size(), 4u);  // rails alone need none
  for (size_t i = 0; i < ladders.size(); ++i) {
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

TEST(Scaffold, SharesNoPlaceWithItselfTheRoofOrTheEdgeBoards) {
  for (unsigned seed = 0; seed < 60; ++seed) {
    const Job job = test_support::seededJob(seed);
    const SettingOut out = deriveSettingOut(job);
    Works works;
    buildScaffold(job, out, works);
    buildFasciaBoards(job, out, works);
    buildRoofCovering(job, out, works);
    std::vector<const Solid*> solids;
    for (const Element& e : works.elements) {
      // Ladders follow one another in one place; end rails may make way for the next platform.
      const bool goes = e.id.ends_with("/ladder") || e.id.ends_with("/end rails");
      solids.push_back(goes ? nullptr : &e.solid);
    }
    for (const auto& [a, b, common] : test::overlaps(solids)) {
      ADD_FAILURE() << seed << ": " << works.elements[a].id << " and " << works.elements[b].id
                    << " share " << common * 1e9 << " mm3";
    }
  }
}

// The levels of the boards on each wall, with the stage that they come in.
std::multimap<std::string, std::pair<double, StageKey>> boardsByWall(const Works& works) {
  std::multimap<std::string, std::pair<double, StageKey>> boards;
  for (const Element& e : works.elements) {
    if (!e.id.ends_with("/boards")) continue;
    boards.insert({e.wall, {e.top - 0.150, e.placed.stage}});  // the toe board's top
  }
  return boards;
}

TEST(Scaffold, BringsEveryGableWithinReachOfBoards) {
  int gables = 0;
  for (unsigned seed = 0; seed < 120; ++seed) {
    const Job job = test_support::seededJob(seed);
    const SettingOut out = deriveSettingOut(job);
    const auto boards = boardsByWall(scaffoldOf(job, out));
    Works walls;
    buildCavityWalls(job, out, walls);
    for (const Element& e : walls.elements) {
      const bool leaf = e.kind == ElementKind::OuterLeaf || e.kind == ElementKind::InnerLeaf;
      if (!leaf || e.placed.stage.kind != StageKind::Gables || !boards.count(e.wall)) continue;
      double highest = -1e9;
      const auto [from, to] = boards.equal_range(e.wall);
      for (auto at = from; at != to; ++at) highest = std::max(highest, at->second.first);
      EXPECT_LE(e.top - highest, kMostReach + 1e-9) << seed << " " << e.id;
      ++gables;
    }
  }
  EXPECT_GT(gables, 40);
}

TEST(Scaffold, BringsEveryLiftWithinReachOfTheBoardsThatArePutUpBeforeIt) {
  for (unsigned seed = 0; seed < 120; ++seed) {
    const Job job = test_support::seededJob(seed);
    const SettingOut out = deriveSettingOut(job);
    const auto all = platforms(job, out);
    for (const Lift& lift : out.lifts) {
      if (lift.bottom - out.levels.groundLow <= 1.2) continue;
      double highest = -1e9;
      for (const Platform& p : all) {
        if (p.stage.kind == StageKind::ScaffoldLift && p.lift.bottom <= lift.bottom)
          highest = std::max(highest, p.level);
      }
      // A step of less than 300 is not worth a platform.
      EXPECT_LE(lift.top - highest, kMostReach + 0.300) << seed;
    }
  }
}

TEST(Scaffold, GuardsTheEdgeOfEveryRoofThatHasPlatforms) {
  for (unsigned seed = 0; seed < 80; ++seed) {
    const Job job = test_support::seededJob(seed);
    const SettingOut out = deriveSettingOut(job);
    std::map<std::string, double> top;
    for (const Element& e : scaffoldOf(job, out).elements) {
      const auto wall = out.wallNamed(e.wall);
      if (out.walls[*wall].eaves != EavesKind::Hip || e.id.ends_with("/ladder")) continue;
      top[e.wall] = std::max(top[e.wall], e.top);
    }
    for (const auto& [wall, level] : top) {
      EXPECT_GE(level - kStandardOver, out.levels.eaves + 0.950 - 1e-9) << seed << " " << wall;
    }
  }
}

TEST(Scaffold, GoesUpTheGableOfTheOrchardHouseOnly) {
  const Job job = demoJob("orchard-house");
  const SettingOut out = deriveSettingOut(job);
  std::set<std::string> walls;
  for (const Element& e : scaffoldOf(job, out).elements) {
    if (e.id.find("/gable ") != std::string::npos) walls.insert(e.wall);
  }
  EXPECT_EQ(walls, std::set<std::string>{"E-F"});
}

StandingBuilding block(double x0, double y0, double x1, double y1) {
  StandingBuilding building;
  building.name = "Barn";
  building.outline = {{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}};
  return building;
}

TEST(Scaffold, LeavesOutAWallWithoutRoomAndSaysWhatStandsInTheWay) {
  Job job = demoJob("smallest");
  job.site.buildings.push_back(block(-1, -2, 7.74, -0.8));
  const SettingOut out = deriveSettingOut(job);
  const ScaffoldRoom room = scaffoldRoom(job, out);
  ASSERT_EQ(room.gaps.size(), 1u);
  EXPECT_EQ(room.gaps[0].wall, 0u);
  EXPECT_NEAR(room.gaps[0].from, 0, 1e-9);
  EXPECT_NEAR(room.gaps[0].to, 6.74, 1e-9);
  EXPECT_NEAR(room.gaps[0].room, 0.8, 1e-6);
  EXPECT_EQ(room.gaps[0].beside, "Barn");
  ASSERT_EQ(room.lengths.size(), 3u);  // the other sides keep theirs, square beside the barn
  EXPECT_FALSE(room.lengths[0].roundStart);
  EXPECT_TRUE(room.lengths[0].roundEnd);
  EXPECT_TRUE(room.lengths[1].roundStart && room.lengths[1].roundEnd);
}

TEST(Scaffold, StandsBesideWhatIsInTheWayOfPartOfAWall) {
  Job job = demoJob("smallest");
  job.site.buildings.push_back(block(-3, -2, 2, -0.8));
  const SettingOut out = deriveSettingOut(job);
  const ScaffoldRoom room = scaffoldRoom(job, out);
  ASSERT_EQ(room.gaps.size(), 1u);
  EXPECT_NEAR(room.gaps[0].to, 2.05, 1e-6);
  ASSERT_GE(room.lengths.size(), 4u);
  EXPECT_EQ(room.lengths[0].wall, 0u);
  EXPECT_NEAR(room.lengths[0].from, 2.05, 1e-6);
  // Rails close the open end: something stands across it at each rail's height.
  double across = 0;
  for (const Element& e : scaffoldOf(job, out).elements) {
    if (e.wall != "A-B" || !e.id.ends_with("/tubes")) continue;
    for (const Vec3& p : e.solid.points) {
      EXPECT_GT(p.x, 2.0) << e.id;
      if (p.x < 2.2 && p.y < -0.3) across = std::max(across, double(p.z));
    }
  }
  EXPECT_GT(across, platforms(job, out).front().level + 0.9);
}

TEST(Scaffold, SaysWhatRoomABoundaryLeaves) {
  Job job = demoJob("smallest");
  job.site.boundary = {{-6, -6}, {7.34, -6}, {7.34, 12}, {-6, 12}};
  const ScaffoldRoom room = scaffoldRoom(job, deriveSettingOut(job));
  ASSERT_EQ(room.gaps.size(), 1u);
  EXPECT_EQ(room.gaps[0].wall, 1u);
  EXPECT_NEAR(room.gaps[0].room, 0.6, 1e-6);
  EXPECT_EQ(room.gaps[0].beside, "the boundary");
  EXPECT_GT(room.gaps[0].needed, 1.4);
}

}  // namespace
