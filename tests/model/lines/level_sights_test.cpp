#include "model/lines/level_sights.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "model/lines/pegs.h"
#include "model/lines/stands_on.h"
#include "tests/support/demo_job.h"
#include "tests/support/random_job.h"

namespace model {
namespace {

using test_support::demoJob;

SetUp standing(const Vec2& at, double backsight, double staff) {
  SetUp setUp;
  setUp.at = at;
  setUp.backsight = backsight;
  setUp.staff = staff;
  return setUp;
}

std::vector<Job> jobsWithMark() {
  std::vector<Job> jobs;
  for (const std::string& name : test_support::demoNames()) jobs.push_back(demoJob(name));
  for (unsigned seed = 0; seed < 20; ++seed) jobs.push_back(test_support::seededJob(seed));
  for (Job& job : jobs)
    if (!job.site.benchMark) job.site.benchMark = BenchMark{"Peg", {-3, -3}, 0.100};
  return jobs;
}

// Whatever is booked on the way gives the level back.
void expectCarried(const Instrument& instrument, const LevelSight& sight, double level) {
  double line = instrument.collimation;
  double mark = 0;
  bool stands = true;
  for (const CarryStep& step : sight.carry.steps) {
    EXPECT_NEAR(step.changeLevel, line - step.foresight, 1e-9);
    mark = step.changeLevel + step.tape.value_or(0);
    stands = step.next.has_value();
    if (stands) line = mark + step.next->backsight;
  }
  EXPECT_NEAR(stands ? line - sight.carry.reading.value_or(1e9) : mark, level, 1e-9);
}

TEST(LevelSights, GiveEveryLevelBackWhetherReadOrCarried) {
  size_t read = 0, carried = 0;
  for (const Job& job : jobsWithMark()) {
    const SettingOut out = deriveSettingOut(job);
    SCOPED_TRACE(job.name);
    for (const model::SetUp& setUp : {standing({-2, -2}, 1.3, 5), standing({-4, 1}, 0.9, 3)}) {
      const auto instrument = instrumentOf(job, setUp);
      ASSERT_TRUE(instrument);
      const auto sights = sightsOfLevels(job, out, setUp);
      ASSERT_EQ(sights.size(), out.schedule.size());
      for (size_t i = 0; i < sights.size(); ++i) {
        const LevelSight& sight = sights[i];
        // A staff is read to the millimetre.
        const double level = std::round(out.schedule[i].level * 1000) / 1000;
        EXPECT_NEAR(sight.reading.reading, job.site.benchMark->level + setUp.backsight - level,
                    1e-9);
        // The schedule runs downwards, so readings grow.
        if (i > 0) {
          EXPECT_GE(sight.reading.reading, sights[i - 1].reading.reading);
        }
        EXPECT_EQ(sight.words.empty(), sight.reading.reach == Reach::Upright);
        if (sight.reading.canBeRead()) {
          EXPECT_TRUE(sight.carry.steps.empty());
          EXPECT_LE(std::fabs(sight.reading.reading), setUp.staff + 1e-9);
          ++read;
        } else if (sight.carry.reached) {
          expectCarried(*instrument, sight, level);
          EXPECT_GE(sight.words.size(), 2u);
          ++carried;
        }
      }
    }
  }
  EXPECT_GT(read, 300u);
  EXPECT_GT(carried, 100u);
}

const LevelSight& sightOf(const SettingOut& out, const std::vector<LevelSight>& sights,
                          const std::string& key) {
  const auto line = std::find_if(out.schedule.begin(), out.schedule.end(),
                                 [&](const auto& l) { return l.key == key; });
  if (line == out.schedule.end()) throw std::runtime_error(key);
  return sights[size_t(line - out.schedule.begin())];
}

TEST(LevelSights, OfOrchardHouseFromItsSite) {
  const Job job = demoJob("orchard-house");
  const SettingOut out = deriveSettingOut(job);
  const auto sights = sightsOfLevels(job, out, job.setUps.at(0));
  // The mark is at 0.185, the backsight 1.240: the line is at 1.425.
  EXPECT_NEAR(sightOf(out, sights, "damp-course").reading.reading, 1.425, 1e-9);
  EXPECT_NEAR(sightOf(out, sights, "top-of-concrete 2").reading.reading, 2.625, 1e-9);
  EXPECT_EQ(sightOf(out, sights, "wall-top").reading.reach, Reach::UpsideDown);
  EXPECT_EQ(sightOf(out, sights, "ridge").reading.reach, Reach::TooHigh);
  model::SetUp shorter = job.setUps.at(0);
  shorter.staff = 3;
  const auto less = sightsOfLevels(job, out, shorter);
  const LevelSight& dig = sightOf(out, less, "cellar-formation");
  EXPECT_EQ(dig.reading.reach, Reach::StaffTooShort);
  ASSERT_TRUE(dig.carry.reached);
  EXPECT_FALSE(dig.carry.steps.empty());
  EXPECT_NE(dig.words.at(0).find("past the staff by"), std::string::npos);
  EXPECT_NE(dig.words.at(1).find("change point 1"), std::string::npos);
}

TEST(LevelSights, NameTheSetUpOfTheJobThatReadsWhatThisOneDoesNot) {
  const Job job = demoJob("orchard-house");
  const SettingOut out = deriveSettingOut(job);
  // On the first floor, its line at 4.150: with its staff of 4 m the concrete is out of reach.
  const auto sights = sightsOfLevels(job, out, job.setUps.at(2));
  EXPECT_EQ(sightOf(out, sights, "top-of-concrete").words.back(), "set-up Site reads it: 2.400");
  EXPECT_EQ(sightOf(out, sights, "wall-top").reading.reach, Reach::UpsideDown);
}

// Every peg and pin is read or carried to, and gives its level back.
TEST(LevelSights, GiveEveryPegBackWhetherReadOrCarried) {
  size_t read = 0, carried = 0;
  for (const Job& job : jobsWithMark()) {
    const SettingOut out = deriveSettingOut(job);
    SCOPED_TRACE(job.name);
    std::vector<Vec3> points;
    for (const SetOutPeg& peg : derivePegs(job, out, deriveBoards(job, out)))
      points.emplace_back(peg.at, peg.level);
    const model::SetUp setUp = standing({-2, -2}, 1.3, 3);
    const auto instrument = instrumentOf(job, setUp);
    const auto sights = sightsOfPoints(job, out, setUp, points);
    ASSERT_EQ(sights.size(), points.size());
    for (size_t i = 0; i < sights.size(); ++i) {
      const double level = std::round(points[i].z * 1000) / 1000;
      EXPECT_EQ(sights[i].at, Vec2(points[i]));
      EXPECT_NEAR(sights[i].reading.reading, instrument->collimation - level, 1e-9);
      if (sights[i].reading.canBeRead()) {
        ++read;
      } else if (sights[i].carry.reached) {
        expectCarried(*instrument, sights[i], level);
        ++carried;
      }
    }
  }
  EXPECT_GT(read, 500u);
  EXPECT_GT(carried, 20u);
}

// Levels are carried from an upper floor over that floor, not over the ground under it.
TEST(LevelSights, FromAnUpperFloorAreCarriedOverIt) {
  Job job = demoJob("orchard-house");
  const SettingOut out = deriveSettingOut(job);
  model::SetUp plate = job.setUps.at(2);
  ASSERT_EQ(plate.floor, "First floor");
  EXPECT_EQ(standsOn(job, out, plate), out.levels.structuralFloor.at(1));
  job.setUps = {plate};
  const auto from = sightsOfLevels(job, out, plate);
  const LevelSight& concrete = sightOf(out, from, "top-of-concrete");
  ASSERT_FALSE(concrete.carry.steps.empty());
  const CarryStep& step = concrete.carry.steps.at(0);
  EXPECT_TRUE(step.onFloor);
  EXPECT_NEAR(step.changeLevel, out.levels.structuralFloor.at(1), 0.0006);
  EXPECT_NE(concrete.words.at(1).find("change point 1 on the floor at"), std::string::npos)
      << concrete.words.at(1);
  plate.floor.clear();
  EXPECT_EQ(standsOn(job, out, plate), out.terrain.levelAt(plate.at));
  plate.floor = "cellar";
  EXPECT_EQ(standsOn(job, out, plate), out.levels.cellarSlabTop);
}

TEST(LevelSights, StandOnTheNamedMarkOrTheMainOne) {
  Job job;
  job.outline = {{0, 0}, {6, 0}, {6, 4}, {0, 4}};
  model::SetUp setUp = standing({-2, -2}, 1.5, 5);
  EXPECT_FALSE(instrumentOf(job, setUp));
  EXPECT_TRUE(sightsOfLevels(job, deriveSettingOut(job), setUp).empty());
  job.site.benchMark = BenchMark{"Gate", {-3, -3}, 0.100};
  job.site.marks = {BenchMark{"Kerb", {-3, 0}, -0.400}};
  EXPECT_NEAR(instrumentOf(job, setUp)->collimation, 1.600, 1e-12);
  setUp.mark = "kerb";
  EXPECT_NEAR(instrumentOf(job, setUp)->collimation, 1.100, 1e-12);
  setUp.mark = "Oak";
  EXPECT_FALSE(instrumentOf(job, setUp));
}

TEST(LevelSights, OfAPointAreThoseOfALevelThere) {
  const Job job = demoJob("orchard-house");
  const SettingOut out = deriveSettingOut(job);
  size_t carried = 0;
  for (const model::SetUp& setUp : job.setUps) {
    const auto sights = sightsOfLevels(job, out, setUp);
    for (size_t i = 0; i < sights.size(); ++i) {
      const auto point = sightOfPoint(job, out, setUp, {sights[i].at, out.schedule[i].level});
      ASSERT_TRUE(point);
      EXPECT_EQ(point->words, sights[i].words) << out.schedule[i].name;
      EXPECT_EQ(point->reading.reading, sights[i].reading.reading);
      carried += !point->carry.steps.empty();
    }
  }
  EXPECT_GT(carried, 3u);
  Job bare;
  bare.outline = {{0, 0}, {6, 0}, {6, 4}, {0, 4}};
  EXPECT_FALSE(sightOfPoint(bare, deriveSettingOut(bare), standing({0, 0}, 1.2, 5), {0, 0, 0}));
}

}  // namespace
}  // namespace model
