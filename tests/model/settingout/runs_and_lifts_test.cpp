#include <cmath>

#include <gtest/gtest.h>

#include "model/settingout/derive.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"

namespace {

using model::FoundationRun;
using model::Job;
using model::SettingOut;
using test_support::demoJob;

std::vector<FoundationRun> runsOf(const SettingOut& out, const std::string& wall) {
  std::vector<FoundationRun> runs;
  for (const auto& run : out.foundations) {
    if (out.walls[run.wall].name == wall) runs.push_back(run);
  }
  return runs;
}

TEST(FoundationRuns, FollowTheStepsAndTheCellarOfTheOrchardHouse) {
  const auto out = model::deriveSettingOut(demoJob("orchard-house"));
  const auto south = runsOf(out, "A-B");
  ASSERT_EQ(south.size(), 2u);
  EXPECT_NEAR(south[0].to, 6.265, 1e-6);  // 25 of waterproofing outside the cellar wall at 6.290
  EXPECT_NEAR(south[0].top, -1.200, 1e-9);
  EXPECT_NEAR(south[0].underside, -1.425, 1e-9);
  EXPECT_FALSE(south[0].onCellar);
  EXPECT_TRUE(south[1].onCellar);
  EXPECT_NEAR(south[1].top, -0.325, 1e-9);
  const auto west = runsOf(out, "F-A");
  ASSERT_EQ(west.size(), 2u);
  EXPECT_NEAR(west[0].to, 6.000, 1e-9);
  EXPECT_NEAR(west[0].top, -0.975, 1e-9);
  EXPECT_NEAR(west[1].top, -1.200, 1e-9);
  ASSERT_EQ(runsOf(out, "B-C").size(), 1u);
  EXPECT_TRUE(runsOf(out, "B-C")[0].onCellar);
  ASSERT_EQ(runsOf(out, "D-E").size(), 1u);
  EXPECT_FALSE(runsOf(out, "D-E")[0].onCellar);
}

TEST(FoundationRuns, AStepIsMeasuredFromTheCornerNamedFirst) {
  Job job = demoJob("smallest");
  job.foundations.steps = {{"A-B", 4.0, std::nullopt, -0.9}};
  auto runs = runsOf(model::deriveSettingOut(job), "A-B");
  ASSERT_EQ(runs.size(), 2u);
  EXPECT_NEAR(runs[0].to, 4.0, 1e-9);
  EXPECT_NEAR(runs[1].top, -0.9, 1e-9);
  job.foundations.steps = {{"B-A", 4.0, std::nullopt, -0.9}};
  runs = runsOf(model::deriveSettingOut(job), "A-B");
  ASSERT_EQ(runs.size(), 2u);
  EXPECT_NEAR(runs[0].to, 2.74, 1e-9);
  EXPECT_NEAR(runs[0].top, -0.9, 1e-9);
}

TEST(FoundationRuns, BlindingLiesBetweenTheConcreteAndTheFormation) {
  Job job = demoJob("smallest");
  job.foundations.blinding = 0.05;
  for (const auto& run : model::deriveSettingOut(job).foundations) {
    EXPECT_NEAR(run.top - run.underside, 0.200, 1e-9);
    EXPECT_NEAR(run.underside - run.formation, 0.050, 1e-9);
  }
}

// Level ground at -0.150, good ground at 600 under it: a lower top makes the concrete shorter.
TEST(FoundationRuns, TrenchFillWithALowerTopGoesNoDeeperInTheSameGround) {
  Job job = demoJob("smallest");
  job.foundations.kind = model::FoundationKind::TrenchFill;
  job.ground.goodGround = 1.2;
  job.foundations.top = -0.45;
  job.foundations.steps = {{"A-B", 4.0, std::nullopt, -0.75}};
  const auto runs = runsOf(model::deriveSettingOut(job), "A-B");
  ASSERT_EQ(runs.size(), 2u);
  EXPECT_NEAR(runs[0].formation, -1.35, 1e-9);
  EXPECT_NEAR(runs[1].top, -0.75, 1e-9);
  EXPECT_NEAR(runs[1].formation, -1.35, 1e-9);
  // Never under half a metre of concrete.
  job.foundations.steps[0].top = -0.975;
  EXPECT_NEAR(runsOf(model::deriveSettingOut(job), "A-B")[1].formation, -1.475, 1e-9);
  // A thickness from the drawing stays what it is.
  job.foundations.thickness = 0.8;
  EXPECT_NEAR(runsOf(model::deriveSettingOut(job), "A-B")[1].formation, -1.775, 1e-9);
}

// The ground falls from -0.2 at A and D to -1.1 at B and C: each length's concrete goes to the good
// ground under it, not all of it to the lowest on the site.
TEST(FoundationRuns, TrenchFillFollowsTheGroundStepByStep) {
  Job job;
  job.outline = {{0, 0}, {12, 0}, {12, 6}, {0, 6}};
  job.site.spots = {{{0, 0}, -0.2}, {{0, 6}, -0.2}, {{12, 0}, -1.1}, {{12, 6}, -1.1}};
  job.foundations.kind = model::FoundationKind::TrenchFill;
  job.foundations.top = -0.825;
  job.foundations.steps = {
      {"A-B", 6, std::nullopt, -1.275}, {"B-C", 0, std::nullopt, -1.275}, {"C-D", 0, 6.0, -1.275}};
  const auto out = model::deriveSettingOut(job);
  const auto south = runsOf(out, "A-B");
  ASSERT_EQ(south.size(), 2u);
  const double middle = -0.65;  // of the ground, where the concrete steps
  EXPECT_NEAR(south[0].formation, std::min(middle - 0.6, -0.825 - 0.5), 1e-9);
  EXPECT_NEAR(south[1].formation, std::min(-1.1 - 0.6, -1.275 - 0.5), 1e-9);
  EXPECT_NEAR(runsOf(out, "D-A")[0].formation, south[0].formation, 1e-9);
  EXPECT_NEAR(runsOf(out, "B-C")[0].formation, south[1].formation, 1e-9);
  EXPECT_NEAR(out.levels.foundationFormation, south[0].formation, 1e-9);
}

TEST(FoundationRuns, CoverEveryWallOfEveryJobWithoutGaps) {
  for (unsigned seed = 0; seed < 300; ++seed) {
    const auto out = model::deriveSettingOut(test_support::seededJob(seed));
    for (const auto& wall : out.walls) {
      double at = 0;
      for (const auto& run : runsOf(out, wall.name)) {
        ASSERT_DOUBLE_EQ(run.from, at) << "seed " << seed << " wall " << wall.name;
        ASSERT_GT(run.to, run.from);
        ASSERT_GE(run.top, run.underside);
        ASSERT_GE(run.underside, run.formation);
        at = run.to;
      }
      ASSERT_DOUBLE_EQ(at, wall.length) << "seed " << seed << " wall " << wall.name;
    }
  }
}

TEST(Lifts, OfTheOrchardHouseEndAtScaffoldHeightsHeadsAndFloors) {
  const auto lifts = model::deriveSettingOut(demoJob("orchard-house")).lifts;
  const double tops[] = {1.350, 2.100, 2.458, 3.750, 4.800, 5.100};
  ASSERT_EQ(lifts.size(), 6u);
  for (size_t i = 0; i < 6; ++i) EXPECT_NEAR(lifts[i].top, tops[i], 1e-9);
  EXPECT_EQ(lifts[2].number, 3);
  EXPECT_EQ(lifts[3].storey, 1);
  EXPECT_EQ(lifts[3].number, 1);
}

TEST(Lifts, OfEveryJobRiseFromTheDampCourseToThePlateWithoutGaps) {
  for (unsigned seed = 0; seed < 300; ++seed) {
    Job job = test_support::seededJob(seed);
    job.laying.dayRise = seed % 3 == 0 ? 1.5 : 0.6 + 0.05 * (seed % 17);
    const auto out = model::deriveSettingOut(job);
    double at = out.levels.dampCourse;
    for (const auto& lift : out.lifts) {
      ASSERT_DOUBLE_EQ(lift.bottom, at) << "seed " << seed;
      ASSERT_GT(lift.top, lift.bottom) << "seed " << seed;
      ASSERT_LE(lift.top - lift.bottom, job.laying.dayRise + 1e-6) << "seed " << seed;
      at = lift.top;
    }
    ASSERT_DOUBLE_EQ(at, out.levels.wallTop) << "seed " << seed;
  }
}

TEST(Lifts, OfALowDayAreInWholeBlocks) {
  Job job = demoJob("orchard-house");
  job.laying.dayRise = 1.0;
  const auto lifts = model::deriveSettingOut(job).lifts;
  EXPECT_NEAR(lifts[0].top, 0.900, 1e-9);  // four blocks
  EXPECT_NEAR(lifts[1].top, 1.500, 1e-9);  // half of what is left to the heads, in courses
}

TEST(Lifts, BreakAtWholeCoursesExceptAtFloorsHeadsAndThePlate) {
  for (unsigned seed = 0; seed < 100; ++seed) {
    const Job job = test_support::seededJob(seed);
    const auto out = model::deriveSettingOut(job);
    for (const auto& lift : out.lifts) {
      const double courses = (lift.top - out.levels.dampCourse) / job.walls.course();
      const bool whole = std::fabs(courses - std::round(courses)) < 1e-6;
      bool named = lift.top == out.levels.wallTop;
      for (const double bearing : out.levels.joistBearing) named = named || lift.top == bearing;
      for (const auto& head : out.levels.commonHead) named = named || (head && lift.top == *head);
      EXPECT_TRUE(whole || named) << "seed " << seed << " top " << lift.top;
    }
  }
}

TEST(SettingOut, TurningAndMovingTheWholeSiteChangesNoLevelAndNoLength) {
  const Job job = demoJob("orchard-house");
  Job moved = job;
  const double angle = 0.7;
  const auto turn = [&](model::Vec2& p) {
    p = {p.x * std::cos(angle) - p.y * std::sin(angle) + 31,
         p.x * std::sin(angle) + p.y * std::cos(angle) - 12};
  };
  for (auto& p : moved.outline) turn(p);
  for (auto& p : moved.site.boundary) turn(p);
  for (auto& p : moved.cellar->outline) turn(p);
  for (auto& spot : moved.site.spots) turn(spot.at);
  for (auto& building : moved.site.buildings) {
    for (auto& p : building.outline) turn(p);
  }
  const auto a = model::deriveSettingOut(job), b = model::deriveSettingOut(moved);
  ASSERT_EQ(a.schedule.size(), b.schedule.size());
  for (size_t i = 0; i < a.schedule.size(); ++i) {
    EXPECT_NEAR(a.schedule[i].level, b.schedule[i].level, 1e-9) << a.schedule[i].key;
  }
  ASSERT_EQ(a.foundations.size(), b.foundations.size());
  for (size_t i = 0; i < a.foundations.size(); ++i) {
    EXPECT_NEAR(a.foundations[i].to, b.foundations[i].to, 1e-6);
  }
  for (size_t i = 0; i < a.openings.size(); ++i) {
    EXPECT_NEAR(a.openings[i].s0, b.openings[i].s0, 1e-9);
  }
}

TEST(SettingOut, IsTheSameEveryTime) {
  const Job job = demoJob("orchard-house");
  const auto a = model::deriveSettingOut(job), b = model::deriveSettingOut(job);
  ASSERT_EQ(a.schedule.size(), b.schedule.size());
  for (size_t i = 0; i < a.schedule.size(); ++i) {
    EXPECT_EQ(a.schedule[i].key, b.schedule[i].key);
    EXPECT_EQ(a.schedule[i].level, b.schedule[i].level);
  }
  EXPECT_EQ(a.terrain.triangles, b.terrain.triangles);
}

}  // namespace
