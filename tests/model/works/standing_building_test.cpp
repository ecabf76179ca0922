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
  ASSERT_EQ(works.elements.size(), 9u);  // three buildings: below ground, walls, roof
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

}  // namespace
