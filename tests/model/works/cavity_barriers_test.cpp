// Cavity barriers, and what lies in movement joints.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

#include "model/job/read_job.h"
#include "model/works/cavity_plan.h"
#include "model/works/wall_infill.h"
#include "tests/support/random_job.h"
#include "tests/support/wall_works.h"

namespace {

using namespace model;
using test_support::wallsOf;

Job plainHouse() {
  Job job;
  job.outline = {{0, 0}, {6.74, 0}, {6.74, 4.49}, {0, 4.49}};
  return job;
}

double sumOf(const Works& works, ElementKind kind) {
  double sum = 0;
  for (const Element& e : works.elements)
    if (e.kind == kind) sum += volume(e.solid);
  return sum;
}

TEST(CavityBarriers, StandUprightFromTheFootOfTheCavityToItsTop) {
  Job job = plainHouse();
  job.cavityBarriers.push_back({"A-B", "B", 2.0, std::nullopt, 0.100});
  const SettingOut out = deriveSettingOut(job);
  double low = 1e9, high = -1e9, metres = 0;
  for (const Element& e : wallsOf(job, out).elements) {
    if (e.kind != ElementKind::CavityBarrier) continue;
    low = std::min(low, e.underside);
    high = std::max(high, e.top);
    metres += e.quantity.amount;
    EXPECT_EQ(e.placed.stage.kind, StageKind::RunIn);
    for (const Vec3& p : e.solid.points) {
      EXPECT_NEAR(p.x, 6.74 - 2.0, 0.050 + 1e-9);
      EXPECT_GE(p.y, 0.1025 - 1e-9);
      EXPECT_LE(p.y, 0.2025 + 1e-9);
    }
  }
  EXPECT_NEAR(low, cavityFillTop(out, 0), 1e-9);
  EXPECT_NEAR(high, cavityPlan(job, out, 0).levelTop, 1e-9);
  EXPECT_NEAR(metres, high - low, 1e-9);
}

TEST(CavityBarriers, GoUpToTheSlopeOfAGable) {
  Job job = plainHouse();
  job.roof.edges.push_back({"B-C", EavesKind::Gable});
  job.cavityBarriers.push_back({"B-C", "B", 1.5, std::nullopt, 0.050});
  const SettingOut out = deriveSettingOut(job);
  double high = -1e9;
  for (const Element& e : wallsOf(job, out).elements)
    if (e.kind == ElementKind::CavityBarrier) high = std::max(high, e.top);
  const CavityPlan plan = cavityPlan(job, out, 1);
  EXPECT_GT(high, plan.levelTop + 0.5);
  EXPECT_NEAR(high, plan.topBetween(1.525, 1.525), 1e-3);
}

TEST(CavityBarriers, LieLevelAlongTheWholeWallButInItsOpenings) {
  Job job = plainHouse();
  Opening window;
  window.name = "Window";
  window.wall = "A-B";
  window.from = "A";
  window.at = 2;
  job.openings.push_back(window);
  job.cavityBarriers.push_back({"A-B", "", std::nullopt, 1.5, 0.075});
  ASSERT_FALSE(hasErrors(validateJob(job, "", {})));
  const SettingOut out = deriveSettingOut(job);
  const Works works = wallsOf(job, out);
  // The cavity's length, less the window and a closer at either jamb.
  const double length = (6.74 - 0.1025 - 0.1025 + 6.74 - 2 * 0.2025) / 2 - 0.910 - 2 * 0.075;
  EXPECT_NEAR(sumOf(works, ElementKind::CavityBarrier), length * 0.100 * 0.075, 1e-6);
}

// No row of ties has a hole where an upright barrier is.
TEST(CavityBarriers, MoveTheTiesInTheirPlaceToTheirSide) {
  Job job = plainHouse();
  const SettingOut out = deriveSettingOut(job);
  const auto ties = [&](const Job& j) { return cavityPlan(j, out, 0).ties; };
  const size_t before = ties(job).size();
  job.cavityBarriers.push_back({"A-B", "A", ties(job)[3].s, std::nullopt, 0.100});
  const auto moved = ties(job);
  EXPECT_EQ(moved.size(), before);
  for (const TiePlan& tie : moved)
    EXPECT_GT(std::fabs(tie.s - *job.cavityBarriers[0].at), 0.050 + kTieWidth / 2);
}

RC_GTEST_PROP(CavityBarriers, AndTiesAndTraysKeepClearOfEachOther, ()) {
  const Job job = *test_support::randomJob();
  const SettingOut out = deriveSettingOut(job);
  for (size_t wall = 0; wall < out.walls.size(); ++wall) {
    const CavityPlan plan = cavityPlan(job, out, wall);
    for (const BarrierPlan& barrier : plan.barriers) {
      for (const TiePlan& tie : plan.ties) RC_ASSERT(!barrier.rect.overlaps(tie.rect()));
      // An upright one is cut to the slope of a tray that goes past it.
      for (const TrayPlan& tray : plan.trays)
        RC_ASSERT(!barrier.rect.overlaps(tray.rect()) ||
                  (barrier.upright && tray.over != TrayPlan::Over::Lintel));
    }
  }
}

// Units, mortar, holes and joints are the leaf: what a joint takes is what its filler fills.
TEST(MovementJoints, AreFilledAsDeepAndHighAsTheLeaf) {
  for (const bool gable : {false, true}) {
    Job job = plainHouse();
    if (gable) job.roof.edges.push_back({"A-B", EavesKind::Gable});
    const SettingOut out = deriveSettingOut(job);
    const double whole = sumOf(wallsOf(job, out), ElementKind::OuterLeaf);
    job.movementJoints.push_back({"A-B", "B", 2.2, 0.016});
    const Works works = wallsOf(job, out);
    const double filler = sumOf(works, ElementKind::JointFiller);
    EXPECT_GT(filler, 2.5 * 0.016 * 0.1025);
    EXPECT_NEAR(sumOf(works, ElementKind::OuterLeaf) + filler, whole, 1e-6);
  }
}

TEST(MovementJoints, HoldNoBrickAndNoWeepVent) {
  Job job = plainHouse();
  job.movementJoints.push_back({"A-B", "A", 2.2, 0.012});
  const SettingOut out = deriveSettingOut(job);
  const Works works = wallsOf(job, out);
  for (const Element& e : works.elements) {
    if (e.wall != "A-B") continue;
    if (e.kind == ElementKind::WeepVent) {
      for (const Vec3& p : e.solid.points) EXPECT_GT(std::fabs(p.x - 2.2), 0.006 - 1e-9);
    }
    if (e.kind != ElementKind::OuterLeaf) continue;
    for (size_t i = e.firstUnit; i < e.firstUnit + e.unitCount; ++i) {
      const MasonryUnit& u = works.units[i];
      EXPECT_TRUE(u.s1 < 2.194 + 1e-9 || u.s0 > 2.206 - 1e-9);
    }
  }
}

}  // namespace
