#include <map>

#include <gtest/gtest.h>

#include "model/works/cavity_closers.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"
#include "tests/support/solid_referee.h"
#include "tests/support/wall_works.h"

namespace {

using namespace model;
using test_support::demoJob;
using test_support::find;
using test_support::wallsOf;

TEST(CavityClosers, RunUpBothJambsAndUnderTheSillOfAWindow) {
  const Job job = demoJob("orchard-house");
  const Works works = wallsOf(job, deriveSettingOut(job));
  std::map<std::string, double> lengths;
  for (const Element& e : works.elements) {
    if (e.kind != ElementKind::CavityCloser) continue;
    EXPECT_EQ(e.quantity.unit, Unit::Metre);
    EXPECT_EQ(e.material, Material::Insulation);
    // The whole cavity is closed: 75 square to the opening, 150 from leaf to leaf, of which an
    // upright damp course takes 2.
    const bool upright = e.id.find(" jamb/") != std::string::npos;
    EXPECT_NEAR(volume(e.solid), e.quantity.amount * 0.075 * (upright ? 0.148 : 0.150), 1e-9)
        << e.id;
    std::string part = e.id;  // all lifts of one place together
    for (const char* lift : {"/Ground floor/", "/First floor/", "/gable"})
      part = part.substr(0, part.find(lift));
    lengths[part] += e.quantity.amount;
  }
  const std::string kitchen = "wall B-C/cavity closer/Kitchen window/";
  EXPECT_NEAR(lengths[kitchen + "left jamb"], 1.050, 1e-9);
  EXPECT_NEAR(lengths[kitchen + "right jamb"], 1.050, 1e-9);
  EXPECT_NEAR(lengths[kitchen + "sill"], 1.360, 1e-9);
  EXPECT_NEAR(lengths["wall C-D/cavity closer/Front door/threshold"], 1.0225, 1e-9);
  EXPECT_NEAR(lengths["wall C-D/cavity closer/Front door/left jamb"], 2.100, 1e-9);
  EXPECT_NEAR(lengths["wall E-F/cavity closer/Loft light/left jamb"], 0.900, 1e-9);
}

TEST(CavityClosers, AreBuiltInWithTheLiftThatTheyStandIn) {
  const Job job = demoJob("orchard-house");
  const Works works = wallsOf(job, deriveSettingOut(job));
  const Element* low =
      find(works, "wall B-C/cavity closer/Kitchen window/left jamb/Ground floor/lift 1");
  const Element* high =
      find(works, "wall B-C/cavity closer/Kitchen window/left jamb/Ground floor/lift 2");
  ASSERT_NE(low, nullptr);
  ASSERT_NE(high, nullptr);
  EXPECT_NEAR(low->top, 1.350, 1e-9);
  EXPECT_EQ(high->placed.stage, (StageKey{StageKind::RunIn, 0, 2}));
  EXPECT_EQ(low->name, "Cavity closer, Kitchen window, left jamb, Ground floor lift 1");
}

// Seen from outside the wall runs from left to right.
TEST(CavityClosers, TheLeftJambLiesTowardsTheWallsStart) {
  const Job job = demoJob("orchard-house");
  const SettingOut out = deriveSettingOut(job);
  for (size_t wall = 0; wall < out.walls.size(); ++wall) {
    for (const CloserPlan& closer : closerPlan(job, out, wall)) {
      const BuiltOpening& opening = out.openings[closer.opening];
      if (closer.place == "left jamb") {
        EXPECT_NEAR(closer.rect.s1, opening.s0, 1e-9);
      }
      if (closer.place == "right jamb") {
        EXPECT_NEAR(closer.rect.s0, opening.s1, 1e-9);
      }
    }
  }
}

TEST(CavityClosers, CloseEveryJambOfEveryJobOrShareTheNarrowPier) {
  int jambs = 0;
  for (unsigned seed = 0; seed < 150; ++seed) {
    const Job job = test_support::seededJob(seed);
    if (job.walls.cavity <= 0) continue;
    const SettingOut out = deriveSettingOut(job);
    for (size_t wall = 0; wall < out.walls.size(); ++wall) {
      const auto plan = closerPlan(job, out, wall);
      for (size_t i = 0; i < out.openings.size(); ++i) {
        if (out.openings[i].wall != wall) continue;
        int mine = 0;
        for (const CloserPlan& closer : plan) mine += closer.opening == i && closer.upright;
        EXPECT_EQ(mine, 2) << seed << " opening " << i;
        jambs += mine;
      }
      for (size_t a = 0; a < plan.size(); ++a) {
        for (size_t b = a + 1; b < plan.size(); ++b) {
          EXPECT_FALSE(plan[a].rect.overlaps(plan[b].rect)) << seed;
        }
        for (const BuiltOpening& o : out.openings) {
          if (o.wall != wall) continue;
          EXPECT_FALSE(plan[a].rect.overlaps({o.s0, o.sill, o.s1, o.head})) << seed;
        }
      }
    }
  }
  EXPECT_GT(jambs, 200);
}

TEST(CavityClosers, ShareNoPlaceWithLeavesInsulationOrLintels) {
  for (unsigned seed = 0; seed < 60; ++seed) {
    const Job job = test_support::seededJob(seed);
    const Works works = wallsOf(job, deriveSettingOut(job));
    std::vector<const Solid*> solids;
    for (const Element& e : works.elements) solids.push_back(&e.solid);
    for (const auto& [a, b, common] : test::overlaps(solids)) {
      ADD_FAILURE() << seed << ": " << works.elements[a].id << " and " << works.elements[b].id
                    << " share " << common * 1e9 << " mm3";
    }
  }
}

}  // namespace
