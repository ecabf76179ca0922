#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "model/geometry/check_solid.h"
#include "model/works/parts.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"

namespace {

using namespace model;
using test_support::demoJob;

Works standing(const Job& job) {
  Works works;
  buildStandingBuildings(job, deriveSettingOut(job), works);
  return works;
}

TEST(StandingBuildings, OfEveryJobAreClosedAndThereFromTheStart) {
  for (unsigned seed = 0; seed < 150; ++seed) {
    const Job job = test_support::seededJob(seed);
    for (const Element& e : standing(job).elements) {
      EXPECT_EQ(solidFault(e.solid), "") << seed << " " << e.id;
      EXPECT_EQ(e.placed.stage.kind, StageKind::Existing);
    }
  }
}

TEST(StandingBuildings, StandFromTheirFoundationToTheirHeight) {
  const Job job = demoJob("orchard-house");
  const SettingOut out = deriveSettingOut(job);
  const Works works = standing(job);
  // Three buildings: below ground, walls, roof; and the neighbour's own ground, in two parts.
  ASSERT_EQ(works.elements.size(), 11u);
  double low = 1e9;
  for (const Vec2& p : job.site.buildings[0].outline) {
    low = std::min(low, out.terrain.levelAt(p));
  }
  EXPECT_NEAR(works.elements[0].underside, low - 0.5, 1e-9);
  EXPECT_NEAR(works.elements[0].top, low, 1e-9);
  EXPECT_NEAR(works.elements[1].top, low + 2.4, 1e-9);
  EXPECT_GT(works.elements[2].top, low + 2.4 + 0.3);
  EXPECT_EQ(works.elements[0].name, "Old wash house, below ground");
}

TEST(StandingBuildings, OnlyThoseToBeTakenDownGoAndTheyGoFromTheTop) {
  const Works works = standing(demoJob("orchard-house"));
  for (const Element& e : works.elements) {
    const bool shed = e.name.find("Timber shed") == 0;
    EXPECT_EQ(e.removed.has_value(), shed) << e.name;
    if (!shed) continue;
    EXPECT_EQ(e.removed->stage.kind, StageKind::Demolition);
    EXPECT_LT(fractionAt(*e.removed, {0, 0, e.top}), fractionAt(*e.removed, {0, 0, e.underside}));
  }
}

TEST(StandingBuildings, OutsideTheBoundaryStandOnGroundOfTheirOwn) {
  const Job job = demoJob("orchard-house");
  const Works works = standing(job);
  const Polygon& site = deriveSettingOut(job).terrain.boundary;
  const Element *under = nullptr, *round = nullptr;
  for (const Element& e : works.elements) {
    if (e.kind != ElementKind::Ground) continue;
    (e.id.find("ground under") == 0 ? under : round) = &e;
    for (const Vec3& p : e.solid.points)
      EXPECT_TRUE(!contains(site, Vec2(p)) || distanceToOutline(site, Vec2(p)) < 1e-5) << e.id;
  }
  ASSERT_TRUE(under && round);
  EXPECT_NEAR(under->underside, round->underside, 1e-9);
  EXPECT_GT(round->top, under->top + 0.1);  // up to the ground, where the walls start
}

TEST(StandingBuildings, WithANarrowRecessOutsideTheBoundaryStandOnClosedGround) {
  Job job = demoJob("orchard-house");
  StandingBuilding barn;
  barn.name = "Barn";
  for (const Vec2& p : {Vec2{100, 0}, Vec2{110, 0}, Vec2{110, 8}, Vec2{105.5, 8}, Vec2{105.5, 3},
                        Vec2{104.5, 3}, Vec2{104.5, 8}, Vec2{100, 8}})
    barn.outline.push_back(p);
  job.site.buildings = {barn};
  int grounds = 0;
  for (const Element& e : standing(job).elements) {
    if (e.kind != ElementKind::Ground) continue;
    ++grounds;
    EXPECT_EQ(solidFault(e.solid), "") << e.id;
    // 12 by 10 m with the recess filled up, less the barn: 45 m2, its depth 0.6 + 0.3 m.
    const double wanted = e.id.find("ground under") == 0 ? 75 * 0.3 : 45 * 0.9;
    EXPECT_NEAR(volume(e.solid), wanted, 0.01) << e.id;
  }
  EXPECT_EQ(grounds, 2);
}

TEST(StandingBuildings, InsideTheBoundaryStandOnTheSiteItself) {
  Job job = demoJob("orchard-house");
  job.site.boundary.clear();  // then it runs round everything
  for (const Element& e : standing(job).elements) EXPECT_NE(e.kind, ElementKind::Ground) << e.id;
}

TEST(StandingBuildings, KeepTheirIdsWhenAnotherIsLeftOut) {
  Job job = demoJob("orchard-house");
  const auto has = [](const Works& works, const std::string& id) {
    return std::any_of(works.elements.begin(), works.elements.end(),
                       [&](const Element& e) { return e.id == id; });
  };
  EXPECT_TRUE(has(standing(job), "standing building House next door/walls"));
  EXPECT_TRUE(has(standing(job), "ground under standing building House next door"));
  job.site.buildings.erase(job.site.buildings.begin());
  EXPECT_TRUE(has(standing(job), "standing building House next door/walls"));
  EXPECT_FALSE(has(standing(job), "standing building Old wash house/walls"));
}

TEST(StandingBuildings, WithoutANameOrWithOneNameHaveIdsOfTheirOwn) {
  Job job;
  job.outline = {{0, 0}, {5, 0}, {5, 4}, {0, 4}};
  for (const char* name : {"Barn", "", "Barn", "no. 2"}) {
    StandingBuilding building;
    building.name = name;
    const double x = 20 + 10.0 * static_cast<double>(job.site.buildings.size());
    building.outline = {{x, 0}, {x + 4, 0}, {x + 4, 4}, {x, 4}};
    job.site.buildings.push_back(building);
  }
  std::set<std::string> ids;
  for (const Element& e : standing(job).elements) EXPECT_TRUE(ids.insert(e.id).second) << e.id;
  EXPECT_TRUE(ids.count("standing building Barn no. 1/walls"));
  EXPECT_TRUE(ids.count("standing building no. 2/walls"));
  EXPECT_TRUE(ids.count("standing building Barn no. 3/walls"));
}

}  // namespace
