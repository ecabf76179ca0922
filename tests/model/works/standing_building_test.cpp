#include <gtest/gtest.h>

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

TEST(StandingBuildings, InsideTheBoundaryStandOnTheSiteItself) {
  Job job = demoJob("orchard-house");
  job.site.boundary.clear();  // then it runs round everything
  for (const Element& e : standing(job).elements) EXPECT_NE(e.kind, ElementKind::Ground) << e.id;
}

}  // namespace
