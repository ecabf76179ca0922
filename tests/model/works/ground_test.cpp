#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "model/geometry/check_solid.h"
#include "model/works/ground_zones.h"
#include "model/works/parts.h"
#include "tests/support/demo_job.h"
#include "tests/support/solid_referee.h"

namespace model {
namespace {

using test_support::demoJob;

struct Ground {
  Job job;
  SettingOut out;
  Works works;

  explicit Ground(Job from) : job(std::move(from)), out(deriveSettingOut(job)) {
    buildGround(job, out, works);
  }
  double volumeOf(const std::string& start) const {
    double sum = 0;
    for (const Element& e : works.elements) {
      if (e.id.rfind(start, 0) == 0) sum += volume(e.solid);
    }
    return sum;
  }
  const Element* find(const std::string& id) const {
    for (const Element& e : works.elements) {
      if (e.id == id) return &e;
    }
    return nullptr;
  }
};

// 8 x 6 m outside on level ground at -0.150.
Job plainJob() {
  Job job;
  job.outline = {{0, 0}, {8, 0}, {8, 6}, {0, 6}};
  return job;
}

Job cellarJob(double batter) {
  Job job = plainJob();
  job.ground.batter = batter;
  job.cellar = Cellar{};
  job.cellar->outline = {{0, 0}, {4, 0}, {4, 6}, {0, 6}};
  return job;
}

// ---- foundations ------------------------------------------------------------

TEST(Ground, StripConcreteIsTheCentreLineTimesItsSection) {
  Job job = plainJob();
  job.foundations.width = 0.750;
  job.foundations.thickness = 0.225;
  const Ground ground(job);
  const double centreLine = 2 * (8 + 6) - 4 * job.walls.total();
  EXPECT_NEAR(ground.volumeOf("foundation/"), centreLine * 0.750 * 0.225, 1e-9);
}

TEST(Ground, ConcreteRunsFromItsUndersideToItsTop) {
  const Ground ground(demoJob("orchard-house"));
  for (const Element& e : ground.works.elements) {
    if (e.kind != ElementKind::Foundation) continue;
    const bool some = std::any_of(
        ground.out.foundations.begin(), ground.out.foundations.end(), [&](const auto& run) {
          return std::abs(run.top - e.top) < 1e-9 && std::abs(run.underside - e.underside) < 1e-9;
        });
    EXPECT_TRUE(some) << e.id << " " << e.underside << " " << e.top;
  }
}

// Approved Document A, 2004 edition incorporating 2010 and 2013 amendments, section 2E2(d).
TEST(Ground, ConcreteLapsAtAStepAsApprovedDocumentASays) {
  EXPECT_NEAR(lapAtStep(FoundationKind::Strip, 0.225, 0.225), 0.450, 1e-12);
  EXPECT_NEAR(lapAtStep(FoundationKind::Strip, 0.100, 0.150), 0.300, 1e-12);
  EXPECT_NEAR(lapAtStep(FoundationKind::Strip, 0.150, 0.350), 0.350, 1e-12);
  EXPECT_NEAR(lapAtStep(FoundationKind::TrenchFill, 0.300, 0.700), 1.000, 1e-12);
  EXPECT_NEAR(lapAtStep(FoundationKind::TrenchFill, 0.600, 0.700), 1.200, 1e-12);
}

TEST(Ground, TheLowerRunGoesOnUnderTheHigherOneByTheLap) {
  Job job = plainJob();
  job.foundations.thickness = 0.225;
  job.foundations.top = -0.975;
  job.foundations.steps = {{"A-B", 0, 3.0, -1.200}};
  const Ground ground(job);
  const Element* low = ground.find("foundation/wall A-B/1");
  const Element* high = ground.find("foundation/wall A-B/2");
  ASSERT_TRUE(low && high);
  EXPECT_NEAR(bounds(low->solid).high.x, 3.0 + 0.450, 1e-9);
  EXPECT_NEAR(bounds(high->solid).low.x, 3.0, 1e-9);
  EXPECT_NEAR(low->top, -1.200, 1e-9);
  EXPECT_NEAR(high->underside, -1.200, 1e-9);
  EXPECT_NEAR(test::overlap(low->solid, high->solid), 0, 1e-9);
}

TEST(Ground, TrenchFillThatIsAsDeepUnderBothTopsHasNoLapAndNoGap) {
  Job job = plainJob();
  job.foundations.kind = FoundationKind::TrenchFill;
  job.ground.goodGround = 1.2;
  job.foundations.top = -0.45;
  job.foundations.steps = {{"A-B", 4.0, std::nullopt, -0.75}};
  const Ground ground(job);
  const Element *high = ground.find("foundation/wall A-B/1"),
                *low = ground.find("foundation/wall A-B/2");
  ASSERT_TRUE(high && low);
  EXPECT_NEAR(high->underside, -1.35, 1e-9);
  EXPECT_NEAR(low->underside, -1.35, 1e-9);
  EXPECT_NEAR(low->top, -0.75, 1e-9);
  EXPECT_NEAR(bounds(high->solid).high.x, 4, 1e-6);
  EXPECT_NEAR(bounds(low->solid).low.x, 4, 1e-6);
}

TEST(Ground, ASteppedCornerLapsRoundTheCorner) {
  Job job = plainJob();
  job.foundations.thickness = 0.225;
  job.foundations.top = -0.975;
  job.foundations.steps = {{"A-B", 0, std::nullopt, -1.200}};
  const Ground ground(job);
  const Element* low = ground.find("foundation/wall A-B/1");
  ASSERT_TRUE(low);
  // Along D-A and B-C it goes on past where its own strip ends.
  const double stripEnds = (job.walls.total() + job.foundations.width) / 2;
  EXPECT_NEAR(bounds(low->solid).high.y, stripEnds + 0.450, 1e-9);
}

TEST(Ground, ConcreteStopsAtTheCellarsWaterproofing) {
  const Ground ground(demoJob("orchard-house"));
  const Element* run = ground.find("foundation/wall A-B/1");
  ASSERT_TRUE(run);
  EXPECT_NEAR(bounds(run->solid).high.x, 6.290 - 0.025, 1e-6);
}

TEST(Ground, NoStripFloatsOverTheCellarsHole) {
  const Ground ground(demoJob("orchard-house"));
  const Element* lean = ground.find("lean concrete/wall A-B/1");
  ASSERT_TRUE(lean);
  EXPECT_NEAR(lean->underside, ground.out.levels.cellarFormation, 1e-9);
  EXPECT_NEAR(lean->top, -1.425, 1e-9);
}

// ---- dig --------------------------------------------------------------------

TEST(Ground, TrenchesAreDugToTheFormationAtTheConcretesWidth) {
  Job job = plainJob();
  job.groundFloor = {};
  job.foundations.blinding = 0.050;
  const Ground ground(job);
  const double centreLine = 2 * (8 + 6) - 4 * job.walls.total();
  const double stripped = -0.150 - job.ground.topsoil;
  const double depth = stripped - ground.out.levels.foundationFormation;
  // Inside, what lies over the oversite formation is taken by the reduced-level dig.
  const double project = (job.foundations.width - job.walls.total()) / 2;
  const Polygon inner = ground.out.ring(job.walls.total());
  const Polygon innermost = ground.out.ring(job.walls.total() + project);
  const double shared = (signedArea(inner) - signedArea(innermost)) *
                        std::max(0.0, stripped - ground.out.levels.oversite);
  EXPECT_NEAR(ground.volumeOf("spoil/trench/"), centreLine * job.foundations.width * depth - shared,
              1e-9);
}

TEST(Ground, WhatIsDugForTheTrenchesIsFilledAgain) {
  for (const std::string name : {"garage", "smallest"}) {
    const Ground ground(demoJob(name));
    const double stripped = -0.150 - ground.job.ground.topsoil;
    const double wallsInGround =
        (signedArea(ground.out.outline) - signedArea(ground.out.ring(ground.job.walls.total()))) *
        (stripped - ground.out.levels.foundationTop);
    EXPECT_NEAR(ground.volumeOf("spoil/trench/"),
                ground.volumeOf("foundation/") + ground.volumeOf("blinding/") +
                    ground.volumeOf("backfill/") + wallsInGround,
                1e-9)
        << name;
  }
}

// Prismoid, V = L/6 (A1 + 4 Am + A2): Wikibooks, Fundamentals of Transportation, Earthwork.
TEST(Ground, ABatteredHoleIsAPrismoid) {
  for (const double batter : {30.0, 45.0, 60.0, 75.0}) {
    Job job = cellarJob(batter);
    job.site.boundary = {{-20, -20}, {30, -20}, {30, 30}, {-20, 30}};
    const Ground ground(job);
    const double margin = job.ground.workingSpace;
    const double depth = -0.150 - job.ground.topsoil - ground.out.levels.cellarFormation;
    const double reach = depth / std::tan(batter * std::numbers::pi / 180);
    const auto area = [&](double out) { return (4 + 2 * out) * (6 + 2 * out); };
    const double prismoid =
        depth / 6 * (area(margin) + 4 * area(margin + reach / 2) + area(margin + reach));
    EXPECT_NEAR(ground.volumeOf("spoil/cellar/"), prismoid, 1e-4) << batter;
  }
}

TEST(Ground, ABatteredHoleRoundACornerIsWhatItsLevelSlicesSay) {
  Job job = plainJob();
  job.ground.batter = 50;
  job.site.boundary = {{-20, -20}, {30, -20}, {30, 30}, {-20, 30}};
  job.cellar = Cellar{};
  job.cellar->outline = {{0, 0}, {8, 0}, {8, 3}, {4, 3}, {4, 6}, {0, 6}};
  const Ground ground(job);
  const double low = ground.out.levels.cellarFormation, high = -0.150 - job.ground.topsoil;
  const double slope = std::tan(50 * std::numbers::pi / 180);
  double slices = 0;
  const int n = 4000;
  for (int i = 0; i < n; ++i) {
    const double z = low + (high - low) * (i + 0.5) / n;
    slices += area(grown(ground.out.cellarOutline, job.ground.workingSpace + (z - low) / slope)) *
              (high - low) / n;
  }
  EXPECT_NEAR(ground.volumeOf("spoil/cellar/"), slices, slices * 1e-6);
}

TEST(Ground, BenchesGoDownOneAfterAnother) {
  const Ground ground(demoJob("orchard-house"));
  double end = 0, bottom = 0;
  int count = 0;
  for (const Element& e : ground.works.elements) {
    if (e.id.rfind("spoil/cellar/", 0) != 0) continue;
    ASSERT_TRUE(e.removed);
    EXPECT_NEAR(e.removed->begin, end, 1e-12);
    if (count > 0) {
      EXPECT_NEAR(e.top, bottom, 1e-9);
    }
    EXPECT_LE(e.top - e.underside, 0.6 + 1e-9);
    end = e.removed->end;
    bottom = e.underside;
    ++count;
  }
  EXPECT_GE(count, 4);
  EXPECT_DOUBLE_EQ(end, 1);
  EXPECT_NEAR(bottom, ground.out.levels.cellarFormation, 1e-9);
}

// ---- the whole block ---------------------------------------------------------

TEST(Ground, BeforeWorkStartsGroundSpoilAndTopsoilAreTheWholeSite) {
  for (const std::string& name : test_support::demoNames()) {
    const Ground ground(demoJob(name));
    const double base = ground.find("ground")->underside;
    double block = 0;
    for (const auto& [i, j, k] : ground.out.terrain.triangles) {
      const auto& p = ground.out.terrain.points;
      const double area = cross(Vec2(p[j]) - Vec2(p[i]), Vec2(p[k]) - Vec2(p[i])) / 2;
      block += area * ((p[i].z + p[j].z + p[k].z) / 3 - base);
    }
    double there = 0;
    for (const Element& e : ground.works.elements) {
      if (e.placed.stage.kind == StageKind::Existing) there += volume(e.solid);
    }
    Works buildings;
    buildStandingBuildings(ground.job, ground.out, buildings);
    // The neighbour's house is off the site; the others take their own hole out of it.
    double holes = 0;
    for (const StandingBuilding& building : ground.job.site.buildings) {
      if (building.kind == BuildingKind::Neighbour) continue;
      const Region plan{building.outline, {}};
      double low = 1e300;
      for (const Element& e : buildings.elements) {
        if (e.name == building.name + ", below ground") low = e.underside;
      }
      // From the foundation's underside to the ground, which slopes evenly here.
      const Solid over = prism(plan, low, 10);
      for (const auto& [i, j, k] : ground.out.terrain.triangles) {
        const auto& p = ground.out.terrain.points;
        const Region triangle{{Vec2(p[i]), Vec2(p[j]), Vec2(p[k])}, {}};
        for (const Region& piece : intersect({plan}, {triangle})) {
          const Vec3 u = p[j] - p[i], v = p[k] - p[i];
          const double d = u.x * v.y - u.y * v.x;
          const Vec2 slope{(u.z * v.y - v.z * u.y) / d, (u.x * v.z - v.x * u.z) / d};
          const Plane top{slope, p[i].z - slope.x * p[i].x - slope.y * p[i].y};
          holes += volume(prism(piece, Plane::flat(low), top));
        }
      }
      EXPECT_FALSE(over.empty());
    }
    EXPECT_NEAR(there + holes, block, block * 1e-6) << name;
  }
}

TEST(Ground, LeavesStandingBuildingsTheirPlaceAndGroundUnderThem) {
  const Ground ground(demoJob("orchard-house"));
  Works buildings;
  buildStandingBuildings(ground.job, ground.out, buildings);
  ASSERT_FALSE(buildings.elements.empty());
  for (const Element& building : buildings.elements) {
    for (const Element& e : ground.works.elements) {
      if (e.placed.stage.kind != StageKind::Existing) continue;
      EXPECT_LT(test::overlap(building.solid, e.solid), 1e-6) << building.id << " in " << e.id;
    }
  }
}

// What is built on to a house: its concrete stops at the house's wall and goes nowhere under it.
TEST(Ground, FoundationsStopAtABuildingThatTheyJoin) {
  Job job = plainJob();
  job.foundations.thickness = 0.225;
  const Ground alone(job);
  StandingBuilding house;
  house.name = "House";
  house.outline = {{-3, 6}, {11, 6}, {11, 14}, {-3, 14}};
  job.site.buildings.push_back(house);
  const Ground joined(job);
  const double beyond = (job.foundations.width - job.walls.total()) / 2;
  ASSERT_GT(beyond, 0.1);
  EXPECT_NEAR(alone.volumeOf("foundation/") - joined.volumeOf("foundation/"),
              (8 + 2 * beyond) * beyond * 0.225, 1e-6);
  for (const Element& e : joined.works.elements) {
    if (e.placed.stage.kind == StageKind::Existing) continue;
    EXPECT_LT(bounds(e.solid).high.y, 6 + 1e-6) << e.id;
  }
}

TEST(Ground, TopsoilIsPutBackToTheExistingSurfaceOutsideTheWalls) {
  const Ground ground(demoJob("smallest"));
  const Element* back = ground.find("topsoil/put back");
  ASSERT_TRUE(back);
  EXPECT_NEAR(back->top, -0.150, 1e-9);
  EXPECT_NEAR(volume(back->solid),
              ground.volumeOf("topsoil/stripped") -
                  signedArea(ground.out.outline) * ground.job.ground.topsoil,
              1e-6);
}

// ---- floors' beds ------------------------------------------------------------

TEST(Ground, HardcoreIsThickerWhereTheGroundIsLower) {
  const Ground ground(demoJob("orchard-house"));
  const Element* hardcore = ground.find("hardcore");
  ASSERT_TRUE(hardcore);
  EXPECT_NEAR(hardcore->top, ground.out.levels.slabUnderside, 1e-9);
  EXPECT_LT(hardcore->underside, ground.out.levels.oversite - 0.1);
}

TEST(Ground, ASuspendedFloorHasNoHardcore) {
  Job job = plainJob();
  job.groundFloor.kind = GroundFloorKind::Suspended;
  EXPECT_EQ(Ground(job).find("hardcore"), nullptr);
}

TEST(Ground, CellarHasItsSlabWallsAndFinishes) {
  const Ground ground(cellarJob(90));
  const Levels& levels = ground.out.levels;
  const Cellar& cellar = *ground.job.cellar;
  const double toe = cellar.toe, wall = cellar.wall;
  EXPECT_NEAR(ground.volumeOf("cellar/slab"), (4 + 2 * toe) * (6 + 2 * toe) * cellar.slab, 1e-9);
  EXPECT_NEAR(
      ground.volumeOf("cellar/walls"),
      (4.0 * 6.0 - (4 - 2 * wall) * (6 - 2 * wall)) * (levels.cellarWallTop - levels.cellarSlabTop),
      1e-9);
  EXPECT_NEAR(ground.volumeOf("cellar/make-up") + ground.volumeOf("cellar/screed"),
              (4 - 2 * wall) * (6 - 2 * wall) * cellar.makeUp, 1e-9);
}

TEST(Ground, GrownKeepsCornersSharp) {
  const Regions square = grown({{0, 0}, {2, 0}, {2, 2}, {0, 2}}, 0.5);
  EXPECT_NEAR(area(square), 9, 1e-6);
  // A slot that the growth closes.
  const Regions slot =
      grown({{0, 0}, {3, 0}, {3, 2}, {2, 2}, {2, 1}, {1.5, 1}, {1.5, 2}, {0, 2}}, 0.5);
  EXPECT_NEAR(area(slot), 4 * 3, 1e-4);
}

}  // namespace
}  // namespace model
