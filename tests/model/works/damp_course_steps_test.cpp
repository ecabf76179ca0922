// The outer leaf's damp course where it is stepped up, and the tray from it.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "model/job/read_job.h"
#include "model/takeoff/sheets.h"
#include "model/works/cavity_parts.h"
#include "tests/support/random_job.h"
#include "tests/support/wall_works.h"

namespace model {
namespace {

constexpr double kFrom = 2.500, kTo = 4.700;

Job steppedHouse(int courses) {
  Job job;
  job.outline = {{0, 0}, {8.99, 0}, {8.99, 5.39}, {0, 5.39}};
  job.walls.insulation = 0.050;
  if (courses > 0) job.dampCourseSteps = {{"A-B", "B", 8.99 - kTo, 8.99 - kFrom, courses}};
  EXPECT_FALSE(hasErrors(validateJob(job, "", {})));
  return job;
}

TEST(DampCourseSteps, LieInTheBedOfTheirCourseAndGoUpAtBothEnds) {
  const Job job = steppedHouse(3);
  const Works works = test_support::wallsOf(job, deriveSettingOut(job));
  const Element* step = test_support::find(works, "wall A-B/damp course/step 1");
  ASSERT_NE(step, nullptr);
  EXPECT_EQ(step->name, "Wall A-B, damp course, outer leaf, stepped up 3 courses to +0.225");
  EXPECT_NEAR(step->underside, 0, 1e-9);
  EXPECT_NEAR(step->top, 0.225 + kDampCourseThickness, 1e-9);
  EXPECT_NEAR(step->quantity.amount, kTo - kFrom + 2 * 0.225, 1e-9);
  // One sheet, as deep as the leaf: the strip and what goes up under its ends.
  EXPECT_NEAR(volume(step->solid),
              0.1025 * kDampCourseThickness * (kTo - kFrom + kDampCourseThickness + 2 * 0.225),
              1e-9);
  EXPECT_EQ(pieceSizes(step->solid, {1, 0, 0}).size(), 1u);
  // The damp course under it goes on.
  const Element* low = test_support::find(works, "wall A-B/damp course/outer leaf");
  EXPECT_NEAR(low->quantity.amount, (8.99 + 8.99 - 2 * 0.1025) / 2, 1e-6);
}

TEST(DampCourseSteps, TakeFromTheLeafWhatTheyFillAndWhatDrainsTheTray) {
  const auto sumOf = [](const Works& works, ElementKind kind) {
    double sum = 0;
    for (const Element& e : works.elements)
      if (e.kind == kind && e.wall == "A-B") sum += volume(e.solid);
    return sum;
  };
  const Job plain = steppedHouse(0), job = steppedHouse(3);
  const Works before = test_support::wallsOf(plain, deriveSettingOut(plain)),
              after = test_support::wallsOf(job, deriveSettingOut(job));
  const auto all = [&](const Works& works) {
    return sumOf(works, ElementKind::OuterLeaf) + sumOf(works, ElementKind::WeepVent) +
           sumOf(works, ElementKind::DampCourse);
  };
  EXPECT_NEAR(all(before), all(after), 1e-9);
  EXPECT_LT(sumOf(after, ElementKind::OuterLeaf), sumOf(before, ElementKind::OuterLeaf));
}

TEST(DampCourseSteps, LeaveBricksWholeInTheirBedAndEndThemAtTheirUprightParts) {
  const Job job = steppedHouse(3);
  const SettingOut out = deriveSettingOut(job);
  const Works works = test_support::wallsOf(job, out);
  size_t under = 0, over = 0;
  for (const Element& e : works.elements) {
    if (e.kind != ElementKind::OuterLeaf || e.wall != "A-B") continue;
    for (size_t i = e.firstUnit; i < e.firstUnit + e.unitCount; ++i) {
      const MasonryUnit& unit = works.units[i];
      if (unit.course < 0) continue;
      EXPECT_NEAR(unit.height(), 0.065, 1e-6) << "cut in height";
      EXPECT_TRUE(unit.z1 < 0.225 + 1e-9 || unit.z0 > 0.225 + kDampCourseThickness);
      const bool beside = unit.course >= 0 && unit.course < 3;
      for (const double s : {kFrom, kTo}) {
        const bool across = unit.s0 < s && unit.s1 > s;
        if (beside && across) ADD_FAILURE() << "a brick in a strip at " << s;
        if (beside) under += unit.s1 > s - 0.006 && unit.s1 < s ? 1 : 0;
        if (unit.course >= 3) over += across ? 1 : 0;
      }
    }
  }
  EXPECT_EQ(under, 6u);  // a brick ends at each strip in each course
  EXPECT_GT(over, 4u);   // and over them they are bonded again
}

TEST(DampCourseSteps, HaveATrayWithStopEndsThatDrainsOverThem) {
  const Job job = steppedHouse(2);
  const SettingOut out = deriveSettingOut(job);
  const Works works = test_support::wallsOf(job, out);
  const Element* tray = test_support::find(works, "wall A-B/damp course tray/step 1");
  ASSERT_NE(tray, nullptr);
  EXPECT_EQ(tray->name, "Cavity tray over the stepped damp course, wall A-B, with stop ends");
  EXPECT_NEAR(tray->underside, 0.150, 1e-9);
  EXPECT_NEAR(tray->top, 0.450 + kTrayThickness, 1e-9);  // a bed of blocks, 140 or more over it
  EXPECT_NEAR(tray->quantity.amount, kTo - kFrom, 1e-9);
  EXPECT_EQ(pieceSizes(tray->solid, {1, 0, 0}).size(), 3u);
  const Element* vents = test_support::find(works, "wall A-B/weep vents/step 1");
  ASSERT_NE(vents, nullptr);
  EXPECT_GE(vents->quantity.amount, 3);
  EXPECT_NEAR(vents->underside, 0.160, 1e-9);
  EXPECT_NEAR(vents->top, 0.225, 1e-9);
}

// As many as the rows would have had, but for one that their stagger may move past its ends.
TEST(DampCourseSteps, KeepTheTiesThatTheirTrayMovesAside) {
  const Job plain = steppedHouse(0);
  const auto besideStep = [](const CavityPlan& plan) {
    return std::count_if(plan.ties.begin(), plan.ties.end(), [](const TiePlan& tie) {
      return tie.s > kFrom && tie.s < kTo && tie.inner < 1.2;
    });
  };
  const auto before = besideStep(cavityPlan(plain, deriveSettingOut(plain), 0));
  for (int courses = 1; courses <= 8; ++courses) {
    const Job job = steppedHouse(courses);
    const CavityPlan plan = cavityPlan(job, deriveSettingOut(job), 0);
    EXPECT_GE(besideStep(plan), before - 1) << courses;
    for (const TrayPlan& tray : plan.trays) {
      for (const TiePlan& tie : plan.ties) {
        if (tie.s < tray.from || tie.s > tray.to) continue;
        const bool over = tie.outer > tray.low + kTrayThickness + kTieThickness / 2 &&
                          tie.inner > tray.high + kTrayThickness + kTieThickness / 2;
        EXPECT_TRUE(over || (tie.outer < tray.low && tie.inner < tray.high)) << tie.s;
      }
    }
  }
}

TEST(DampCourseSteps, AreDrawnAmongTheJobsThatAreLookedAt) {
  size_t steps = 0;
  for (unsigned seed = 0; seed < 60; ++seed)
    steps += test_support::seededJob(seed).dampCourseSteps.size();
  EXPECT_GT(steps, 15u);
}

}  // namespace
}  // namespace model
