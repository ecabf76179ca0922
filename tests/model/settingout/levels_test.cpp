#include <algorithm>
#include <cmath>
#include <set>

#include <gtest/gtest.h>

#include "model/settingout/derive.h"
#include "tests/support/demo_job.h"

namespace {

using model::Job;
using test_support::demoJob;

constexpr double kHalfMillimetre = 0.0005;

// Worked by hand from assets/jobs/orchard-house.toml; tan 40 = 0.8391, cos 40 = 0.7660.
TEST(Levels, OfTheOrchardHouseAreThoseWorkedByHand) {
  const auto out = model::deriveSettingOut(demoJob("orchard-house"));
  const auto& levels = out.levels;
  EXPECT_DOUBLE_EQ(levels.dampCourse, 0);
  EXPECT_DOUBLE_EQ(levels.finishedFloor.at(0), 0);
  EXPECT_NEAR(levels.structuralFloor.at(0), -0.175, 1e-9);  // 75 screed, 100 insulation
  EXPECT_NEAR(levels.slabUnderside, -0.325, 1e-9);          // 150 slab
  EXPECT_NEAR(levels.oversite, -0.475, 1e-9);               // 150 hardcore
  EXPECT_NEAR(levels.structuralFloor.at(1), 2.700, 1e-9);   // no finish on the deck
  EXPECT_NEAR(levels.joistBearing.at(1), 2.458, 1e-9);      // 22 deck, 220 joists
  EXPECT_NEAR(levels.wallTop, 5.100, 1e-9);
  EXPECT_NEAR(levels.plateTop, 5.150, 1e-9);
  // 252.5 out at 40 degrees: 0.2119 lower; the birdsmouth is 37.5 deep, 0.0490 plumb.
  EXPECT_NEAR(out.rafterSeat, 0.05834, 1e-5);  // 37.5 / sin 40
  EXPECT_NEAR(levels.eavesUnderside, 4.8892, 1e-4);
  EXPECT_NEAR(levels.outerLeafTop, 4.875, 1e-9);  // 65 courses
  EXPECT_NEAR(levels.eaves, 4.9116, 1e-4);        // 300 out: 0.2517 lower; 210 / cos 40: 0.2741
  // Half of the wider wing and its two overhangs, (6.065 + 0.600) / 2, above the eaves.
  EXPECT_NEAR(levels.ridge, 4.9116 + 3.3325 * 0.83910, 2e-4);
  EXPECT_NEAR(levels.foundationTop, -0.975, 1e-9);
  EXPECT_NEAR(levels.foundationFormation, -1.200, 1e-9);
  EXPECT_NEAR(levels.cellarFinishedFloor, -2.525, 1e-9);
  EXPECT_NEAR(levels.cellarSlabTop, -2.725, 1e-9);
  EXPECT_NEAR(levels.cellarSlabUnderside, -3.025, 1e-9);
  EXPECT_NEAR(levels.cellarFormation, -3.075, 1e-9);
  EXPECT_NEAR(levels.cellarWallTop, -0.325, 1e-9);
  EXPECT_NEAR(levels.groundLow, -0.560, 1e-9);   // the spot level at B
  EXPECT_NEAR(levels.groundHigh, -0.160, 1e-9);  // at F
}

TEST(Levels, OfTheSmallestJobAreSoundDefaults) {
  const auto levels = model::deriveSettingOut(demoJob("smallest")).levels;
  EXPECT_DOUBLE_EQ(levels.groundLow, -0.150);
  EXPECT_DOUBLE_EQ(levels.groundHigh, -0.150);
  EXPECT_DOUBLE_EQ(levels.dampCourse, 0);
  EXPECT_NEAR(levels.wallTop, 2.400, 1e-9);  // 32 courses
  // Good ground at -0.750: with 200 of concrete the top may be at -0.550; the next whole course
  // down is the eighth.
  EXPECT_NEAR(levels.foundationTop, -0.600, 1e-9);
  EXPECT_NEAR(levels.foundationFormation, -0.800, 1e-9);
}

TEST(Levels, TrenchFillComesUpToTheLastWholeCourseUnderTheGround) {
  Job job = demoJob("smallest");
  job.foundations.kind = model::FoundationKind::TrenchFill;
  auto levels = model::deriveSettingOut(job).levels;
  EXPECT_NEAR(levels.foundationTop, -0.300, 1e-9);        // 150 under -0.150
  EXPECT_NEAR(levels.foundationFormation, -0.800, 1e-9);  // 500 thick; good ground is at -0.750
  job.ground.goodGround = 1.1;
  levels = model::deriveSettingOut(job).levels;
  EXPECT_NEAR(levels.foundationTop, -0.300, 1e-9);
  EXPECT_NEAR(levels.foundationFormation, -1.250, 1e-9);
}

TEST(Levels, AFoundationIsNeverNearerThanTwoCoursesToTheGround) {
  Job job = demoJob("smallest");
  job.ground.goodGround = 0.2;
  const auto levels = model::deriveSettingOut(job).levels;
  EXPECT_NEAR(levels.foundationTop, -0.300, 1e-9);
  EXPECT_LE(levels.foundationFormation, -0.350);
}

TEST(Levels, TheWallTopIsInWholeCoursesAboveTheDampCourse) {
  Job job = demoJob("smallest");
  job.walls.dampCourse = -0.020;
  const auto levels = model::deriveSettingOut(job).levels;
  EXPECT_NEAR(levels.wallTop, -0.020 + 32 * 0.075, 1e-9);
}

TEST(Levels, TheOuterLeafStopsUnderTheRafters) {
  for (const double pitch : {5.0, 15.0, 30.0, 45.0, 60.0}) {
    Job job = demoJob("smallest");
    job.roof.pitch = pitch;
    const auto levels = model::deriveSettingOut(job).levels;
    EXPECT_LE(levels.outerLeafTop, levels.eavesUnderside + 1e-9) << pitch;
    EXPECT_LE(levels.outerLeafTop, levels.wallTop + 1e-9) << pitch;
    EXPECT_GT(levels.outerLeafTop + 0.075, std::min(levels.eavesUnderside, levels.wallTop))
        << pitch;
  }
}

TEST(Levels, LowGroundBetweenCornersIsFound) {
  Job job = demoJob("smallest");
  job.site.boundary = {{-5, -5}, {12, -5}, {12, 10}, {-5, 10}};
  job.site.spots = {{{-5, -5}, 0}, {{12, -5}, 0}, {{12, 10}, 0}, {{-5, 10}, 0}, {{3, 0}, -0.9}};
  EXPECT_NEAR(model::deriveSettingOut(job).levels.groundLow, -0.9, 1e-9);
}

TEST(Levels, TheCommonestHeadOfAStoreyIsTheCommonOne) {
  const auto out = model::deriveSettingOut(demoJob("orchard-house"));
  ASSERT_EQ(out.levels.commonHead.size(), 2u);
  EXPECT_NEAR(out.levels.commonHead[0].value(), 2.100, 1e-9);
  EXPECT_NEAR(out.levels.commonHead[1].value(), 4.800, 1e-9);
  EXPECT_FALSE(model::deriveSettingOut(demoJob("smallest")).levels.commonHead.at(0));
}

TEST(Coursing, CountsFromTheDampCourseBothWays) {
  EXPECT_NEAR(model::courseAtOrUnder(0.100, 0, 0.075), 0.075, 1e-12);
  EXPECT_NEAR(model::courseNear(0.100, 0, 0.075), 0.075, 1e-12);
  EXPECT_NEAR(model::courseAtOrUnder(-0.010, 0, 0.075), -0.075, 1e-12);
  EXPECT_NEAR(model::courseAtOrUnder(0.2249999999, 0, 0.075), 0.225, 1e-9);
  EXPECT_NEAR(model::courseNear(1.0, 0.3, 0.075), 0.975, 1e-12);
}

TEST(Schedule, SaysWhereTheCeilingOfEachStoreyUnderAnotherIs) {
  Job job = demoJob("orchard-house");
  job.upperFloor.ceiling = 0.015;
  const auto out = model::deriveSettingOut(job);
  // First floor 2.700, less 22 of deck, 220 of joists and 15 of board.
  ASSERT_EQ(out.levels.ceiling.size(), 1u);
  EXPECT_NEAR(out.levels.ceiling[0], 2.443, 1e-9);
  const auto found = std::find_if(out.schedule.begin(), out.schedule.end(),
                                  [](const auto& l) { return l.key == "ceiling:0"; });
  ASSERT_NE(found, out.schedule.end());
  EXPECT_EQ(found->name, "ceiling, ground floor");
  EXPECT_NEAR(found->level, 2.443, 1e-9);
  job.storeys.resize(1);
  EXPECT_TRUE(model::deriveSettingOut(job).levels.ceiling.empty());
}

TEST(Schedule, RunsFromTheRidgeDownAndEveryKeyIsItsOwn) {
  for (const auto& name : test_support::demoNames()) {
    const auto out = model::deriveSettingOut(demoJob(name));
    ASSERT_FALSE(out.schedule.empty());
    EXPECT_EQ(out.schedule.front().key, "ridge") << name;
    std::set<std::string> keys;
    for (size_t i = 0; i < out.schedule.size(); ++i) {
      EXPECT_TRUE(keys.insert(out.schedule[i].key).second) << out.schedule[i].key;
      if (i > 0) {
        EXPECT_LE(out.schedule[i].level, out.schedule[i - 1].level);
      }
    }
  }
}

const model::ScheduledLevel* line(const model::SettingOut& out, const std::string& key) {
  for (const auto& l : out.schedule) {
    if (l.key == key) return &l;
  }
  return nullptr;
}

TEST(Schedule, CallsTheGroundFloorWhatItIsBuiltOf) {
  struct Case {
    const char *job, *top, *underside;
  };
  for (const Case& c :
       {Case{"garage", "top of slab", "underside of slab"},
        Case{"skew-corner", "top of beams and blocks", "underside of floor beams"},
        Case{"garden-store", "top of floor over cellar", "underside of floor over cellar"},
        Case{"orchard-house", "top of slab, ground floor", "underside of slab"}}) {
    const auto out = model::deriveSettingOut(demoJob(c.job));
    ASSERT_NE(line(out, "structural-floor:0"), nullptr);
    EXPECT_EQ(line(out, "structural-floor:0")->name, c.top) << c.job;
    EXPECT_EQ(line(out, "slab-underside")->name, c.underside) << c.job;
    const bool allOverCellar = std::string(c.job) == "garden-store";
    EXPECT_EQ(line(out, "oversite") == nullptr, allOverCellar) << c.job;
  }
}

TEST(Schedule, SaysCoursesAndWhereEachLevelIs) {
  const auto out = model::deriveSettingOut(demoJob("orchard-house"));
  const auto* head = line(out, "head:front door");
  ASSERT_NE(head, nullptr);
  EXPECT_EQ(head->name, "lintel soffit");
  EXPECT_TRUE(head->wholeCourse);
  EXPECT_EQ(head->course, 28);
  EXPECT_NE(head->where.find("Kitchen window"), std::string::npos);
  const auto* bearing = line(out, "joist-bearing:1");
  ASSERT_NE(bearing, nullptr);
  EXPECT_FALSE(bearing->wholeCourse);
  const auto* concrete = line(out, "top-of-concrete");
  ASSERT_NE(concrete, nullptr);
  EXPECT_NEAR(concrete->level, -0.975, kHalfMillimetre);
  EXPECT_EQ(concrete->course, -13);
  const auto* lower = line(out, "top-of-concrete 2");
  ASSERT_NE(lower, nullptr);
  EXPECT_NEAR(lower->level, -1.200, kHalfMillimetre);
  EXPECT_EQ(lower->where, "A-B, F-A");
  EXPECT_NE(line(out, "cellar-formation"), nullptr);
  EXPECT_EQ(line(model::deriveSettingOut(demoJob("garage")), "cellar-formation"), nullptr);
}

TEST(Schedule, HasEveryLiftAndTheTopOfBlindingUnderEveryConcrete) {
  const auto out = model::deriveSettingOut(demoJob("orchard-house"));
  ASSERT_FALSE(out.lifts.empty());
  for (const model::Lift& lift : out.lifts) {
    const auto* top =
        line(out, "lift:" + std::to_string(lift.storey) + ":" + std::to_string(lift.number));
    ASSERT_NE(top, nullptr);
    EXPECT_EQ(top->level, lift.top);
  }
  EXPECT_EQ(line(out, "lift:0:1")->name, "top of lift 1, ground floor");
  // 50 of blinding under the cellar, none under the strips.
  ASSERT_NE(line(out, "cellar-blinding"), nullptr);
  EXPECT_NEAR(line(out, "cellar-blinding")->level, line(out, "cellar-formation")->level + 0.050,
              1e-9);
  EXPECT_EQ(line(out, "blinding"), nullptr);
  Job job = demoJob("orchard-house");
  job.foundations.blinding = 0.040;
  const auto blinded = model::deriveSettingOut(job);
  ASSERT_NE(line(blinded, "blinding 2"), nullptr);  // at the step
  for (const char* step : {"", " 2"}) {
    const std::string end = step;
    EXPECT_NEAR(line(blinded, "blinding" + end)->level,
                line(blinded, "formation" + end)->level + 0.040, 1e-9);
    EXPECT_EQ(line(blinded, "blinding" + end)->where, line(blinded, "formation" + end)->where);
  }
}

}  // namespace
