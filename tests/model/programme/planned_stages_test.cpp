// What the job says of its stages: moved, joined, split, added, linked, and what was really done.
#include <gtest/gtest.h>

#include <algorithm>

#include "model/model.h"
#include "model/programme/calendar.h"
#include "tests/model/programme/small_works.h"
#include "tests/support/demo_job.h"

namespace model {
namespace {

// A demo job without what it says of its programme itself, but for its start.
Job plainJob(const std::string& name = "orchard-house") {
  Job job = test_support::demoJob(name);
  job.programme = {};
  job.programme.start = "2027-04-12";
  return job;
}

StageOverride follows(const std::string& stage, const std::string& host) {
  return changed(stage, [&](StageOverride& c) { c.follows = host; });
}
StageOverride with(const std::string& stage, const std::string& host) {
  return changed(stage, [&](StageOverride& c) { c.with = host; });
}

size_t placeOf(const Programme& programme, const std::string& id) {
  const auto found = programme.find(id);
  EXPECT_TRUE(found) << id;
  return found.value_or(0);
}

const Stage& stageOf(const Programme& programme, const std::string& id) {
  return programme.stages.at(placeOf(programme, id));
}

std::string allFaults(const Programme& programme) {
  std::string text;
  for (const ProgrammeFault& fault : programme.faults)
    text += fault.key + ": " + fault.what + "; " + fault.instead + "\n";
  return text;
}

TEST(PlannedStages, AStageIsTakenWhereTheJobPutsIt) {
  Job job = plainJob();
  job.programme.stages = {follows("floor-finish", "windows-and-doors"),
                          follows("strike-scaffold", "floor-finish")};
  const Programme programme = buildModel(job).programme;
  EXPECT_EQ(allFaults(programme), "");
  EXPECT_EQ(placeOf(programme, "floor-finish"), placeOf(programme, "windows-and-doors") + 1);
  EXPECT_EQ(placeOf(programme, "strike-scaffold"), placeOf(programme, "floor-finish") + 1);
}

TEST(PlannedStages, ImpossibleOrdersAreRefusedWithThePhysicalReason) {
  const std::vector<std::tuple<std::string, std::string, std::string>> cases{
      {"pour-foundations", "corners-ground-1", "bears on"},
      {"floor-over-cellar", "backfill-cellar", "props its walls"},
      {"fascia", "strike-scaffold", "from the scaffold"},
      {"dig-trenches", "strip-topsoil", "set out"},
      {"completion", "site-set-up", "before it is done"},
  };
  for (const auto& [stage, host, why] : cases) {
    Job job = plainJob();
    job.programme.stages = {follows(stage, host)};
    const Model model = buildModel(job);
    const auto& faults = model.programme.faults;
    ASSERT_EQ(faults.size(), 1u) << stage << " after " << host;
    EXPECT_EQ(faults[0].severity, Severity::Error);
    EXPECT_EQ(faults[0].key, "programme.stage[0].follows");
    EXPECT_NE(faults[0].what.find(why), std::string::npos) << faults[0].what;
    EXPECT_EQ(model.programme.stages.size(), buildModel(plainJob()).programme.stages.size());
  }
}

TEST(PlannedStages, AJoinedStageIsTheLastPartOfItsHost) {
  Job job = plainJob();
  const Model usual = buildModel(job);
  job.programme.stages = {with("lines-back", "pour-foundations")};
  const Model model = buildModel(job);
  EXPECT_EQ(allFaults(model.programme), "");
  EXPECT_EQ(model.programme.stages.size(), usual.programme.stages.size() - 1);
  const Stage& host = stageOf(model.programme, "pour-foundations");
  EXPECT_EQ(host.days, stageOf(usual.programme, "pour-foundations").days +
                           stageOf(usual.programme, "lines-back").days);
  EXPECT_EQ(host.shares.size(), 2u);
  // What was of the joined stage is made in the last part of the host's own time.
  const size_t at = placeOf(model.programme, "pour-foundations");
  const Placement joined = whole({StageKind::LinesBack});
  const Placement own = whole({StageKind::FoundationPour});
  const double from = timeAt(model.programme, joined, {0, 0, 0});
  EXPECT_GT(from, timeAt(model.programme, own, {0, 0, 0}));
  EXPECT_GT(from, double(at));
  EXPECT_LT(from, double(at) + 1);
}

TEST(PlannedStages, WhatIsToBeJoinedMustLieNextToIt) {
  Job job = plainJob();
  job.programme.stages = {with("lines-back", "pour-foundations"),
                          follows("outside-works", "pour-foundations")};
  const Programme programme = buildModel(job).programme;
  EXPECT_NE(allFaults(programme), "");
}

TEST(PlannedStages, OwnStagesComeAfterWhatTheyFollowAndAreDated) {
  Job job = plainJob();
  job.programme.ownStages = {{"Lay the drains", "backfill-trenches", 2},
                             {"Drains tested", "Lay the drains", 0.5},
                             {"Nowhere", "no-such-stage", 1}};
  const Programme programme = buildModel(job).programme;
  const size_t drains = placeOf(programme, "lay-the-drains");
  EXPECT_EQ(drains, placeOf(programme, "backfill-trenches") + 1);
  EXPECT_EQ(placeOf(programme, "drains-tested"), drains + 1);
  EXPECT_FALSE(programme.find("nowhere"));
  EXPECT_NE(allFaults(programme).find("programme.own[2].follows"), std::string::npos);
  EXPECT_FALSE(programme.stages[drains].start.empty());
  EXPECT_LE(programme.stages[drains - 1].finish, programme.stages[drains].start);
}

TEST(PlannedStages, ASplitStageGoesWallByWallAndKeepsItsWholeWork) {
  Job job = plainJob();
  const Model usual = buildModel(job);
  job.programme.splits = {{"run-in-ground-1", "A-B, B-C", "Street side"}};
  const Model model = buildModel(job);
  EXPECT_EQ(allFaults(model.programme), "");
  EXPECT_EQ(model.programme.stages.size(), usual.programme.stages.size() + 1);
  const size_t rest = placeOf(model.programme, "run-in-ground-1");
  const Stage& part = model.programme.stages[rest + 1];
  EXPECT_EQ(part.name, "Street side");
  EXPECT_EQ(part.id, "run-in-ground-1-part-1");
  size_t moved = 0;
  for (const Element& element : model.works.elements) {
    if (element.placed.stage != part.key) continue;
    ++moved;
    EXPECT_TRUE(element.wall == "A-B" || element.wall == "B-C") << element.id;
  }
  EXPECT_GT(moved, 2u);
  // Both wait for the corners, and what comes next waits for both.
  EXPECT_EQ(part.after, model.programme.stages[rest].after);
  const Stage& next = model.programme.stages[rest + 2];
  EXPECT_TRUE(std::count(next.after.begin(), next.after.end(), rest));
  EXPECT_TRUE(std::count(next.after.begin(), next.after.end(), rest + 1));
}

TEST(PlannedStages, WhatCannotBeSplitIsRefused) {
  for (const auto& [stage, walls] : {std::pair<std::string, std::string>{"corners-ground-1", "A-B"},
                                     {"run-in-ground-1", "X-Y"},
                                     {"run-in-ground-1", ""},
                                     {"set-out", "A-B"}}) {
    Job job = plainJob();
    job.programme.splits = {{stage, walls, ""}};
    const Model model = buildModel(job);
    ASSERT_EQ(model.programme.faults.size(), 1u) << stage << walls;
    EXPECT_EQ(model.programme.faults[0].severity, Severity::Error);
  }
}

TEST(PlannedStages, CrewsWorkSideBySideAndLinksHoldThem) {
  Job job = plainJob();
  job.programme.stages = {changed("outside-works", [](StageOverride& c) { c.crew = "Gardeners"; }),
                          changed("floor-finish", [](StageOverride& c) { c.days = 10; })};
  const Programme side = buildModel(job).programme;
  EXPECT_LT(stageOf(side, "outside-works").start, stageOf(side, "floor-finish").finish);
  EXPECT_FALSE(stageOf(side, "outside-works").critical);
  EXPECT_GT(stageOf(side, "outside-works").floatDays, 0);
  job.programme.links = {
      {"floor-finish", "outside-works", LinkKind::FinishStart, 2, LagKind::Working}};
  const Programme held = buildModel(job).programme;
  EXPECT_EQ(allFaults(held), "");
  EXPECT_NEAR(stageOf(held, "outside-works").from, stageOf(held, "floor-finish").to + 2, 1e-9);
  EXPECT_TRUE(stageOf(held, "outside-works").critical);
}

TEST(PlannedStages, ALinkInACircleIsNamedAndLeftOut) {
  Job job = plainJob();
  job.programme.links = {{"rafters", "dig-trenches"}};
  const Model model = buildModel(job);
  ASSERT_EQ(model.programme.faults.size(), 1u);
  const ProgrammeFault& fault = model.programme.faults[0];
  EXPECT_EQ(fault.key, "programme.link[0].to");
  EXPECT_NE(fault.what.find("dig-trenches"), std::string::npos);
  EXPECT_EQ(stageOf(model.programme, "dig-trenches").start,
            stageOf(buildModel(plainJob()).programme, "dig-trenches").start);
}

TEST(PlannedStages, OutputsSetTheDays) {
  Job job = plainJob();
  const Model usual = buildModel(job);
  job.programme.stages = {changed("dig-cellar", [](StageOverride& c) { c.perDay = 10; })};
  const Model slow = buildModel(job);
  EXPECT_GT(stageOf(slow.programme, "dig-cellar").days,
            2.5 * stageOf(usual.programme, "dig-cellar").days);
}

TEST(PlannedStages, WhatWasReallyDoneMovesTheRest) {
  Job job = plainJob();
  const Programme before = buildModel(job).programme;
  job.programme.stages = {changed("site-set-up", [](StageOverride& c) {
    c.started = "2027-04-14";
    c.finished = "2027-04-16";
  })};
  const Programme after = buildModel(job).programme;
  const Stage& done = stageOf(after, "site-set-up");
  EXPECT_EQ(done.start, "2027-04-14");
  EXPECT_EQ(done.finish, "2027-04-16");
  EXPECT_EQ(done.percent, 100);
  EXPECT_EQ(after.asAt, "2027-04-16");
  EXPECT_EQ(after.stages[1].start, "2027-04-19");
  EXPECT_LT(before.stages[1].start, after.stages[1].start);
  EXPECT_GT(after.stages.back().finish, before.stages.back().finish);
}

TEST(PlannedStages, FinishedBeforeItStartedIsRefused) {
  Job job = plainJob();
  job.programme.stages = {changed("site-set-up", [](StageOverride& c) {
    c.started = "2027-04-14";
    c.finished = "2027-04-12";
  })};
  const Programme programme = buildModel(job).programme;
  ASSERT_EQ(programme.faults.size(), 1u);
  EXPECT_EQ(programme.faults[0].key, "programme.stage[0].finished");
}

TEST(PlannedStages, DeliveriesComeBeforeTheirStage) {
  Job job = plainJob();
  job.programme.deliveries = {{"Facing bricks", "corners-ground-1", 2},
                              {"Nothing", "no-such-stage", 1},
                              {"Sand", "set-out", 100}};
  const Programme programme = buildModel(job).programme;
  ASSERT_EQ(programme.deliveries.size(), 2u);
  EXPECT_EQ(programme.deliveries[0].what, "Sand");
  EXPECT_EQ(programme.deliveries[0].date, "2027-04-12") << "not before there is a site";
  const auto day = dayNumber(programme.deliveries[1].date);
  const auto start = dayNumber(stageOf(programme, "corners-ground-1").start);
  ASSERT_TRUE(day && start);
  EXPECT_LT(*day, *start);
  EXPECT_GE(*day, *start - 4);
}

}  // namespace
}  // namespace model
