#include "model/programme/programme.h"

#include <gtest/gtest.h>

#include <set>

#include "tests/model/programme/small_works.h"

namespace model {
namespace {

using K = StageKind;

Job twoStoreyJob() {
  Job job;
  job.storeys = {{"Ground floor", 0}, {"First floor", 2.7}};
  return job;
}

Works someWorks() {
  return worksIn({{K::TrenchDig},
                  {K::FoundationPour},
                  {K::DampCourse},
                  {K::RaiseCorners, 0, 1},
                  {K::RunIn, 0, 1},
                  {K::RaiseCorners, 1, 2},
                  {K::UpperFloor, 1},
                  {K::Rafters}});
}

TEST(Programme, IdsAreStableAndApart) {
  const Programme programme = deriveProgramme(twoStoreyJob(), twoStoreys(), someWorks());
  const std::vector<std::string> expected{
      "site-set-up", "set-out",          "dig-trenches",    "pour-foundations", "lines-back",
      "damp-course", "corners-ground-1", "run-in-ground-1", "floor-first",      "corners-first-2",
      "rafters",     "outside-works",    "completion"};
  EXPECT_EQ(idsOf(programme), expected);
}

TEST(Programme, StagesAreFoundByIdNumberNameAndBeginning) {
  const Programme programme = deriveProgramme(twoStoreyJob(), twoStoreys(), someWorks());
  EXPECT_EQ(programme.find("dig-trenches"), 2u);
  EXPECT_EQ(programme.find("3"), 2u);
  EXPECT_EQ(programme.find("DIG the foundation trenches"), 2u);
  EXPECT_EQ(programme.find("dig the"), 2u);
  EXPECT_EQ(programme.find("1"), 0u);
  EXPECT_EQ(programme.find(std::to_string(programme.stages.size())), programme.stages.size() - 1);
}

TEST(Programme, WhatFitsNoneOrSeveralIsNotFound) {
  const Programme programme = deriveProgramme(twoStoreyJob(), twoStoreys(), someWorks());
  for (const char* text : {"", "0", "14", "-1", "2.5", "S", "Raise the corners", "no such stage"}) {
    EXPECT_FALSE(programme.find(text)) << text;
  }
}

TEST(Programme, TheJobRenamesRetimesAndNotesAStage) {
  Job job = twoStoreyJob();
  job.programme.stages = {changed("dig-trenches",
                                  [](StageOverride& c) {
                                    c.name = "Trenches";
                                    c.days = 7;
                                    c.note = "narrow lane";
                                  }),
                          inDays("4", 2.5), changed("no-such-stage", [](StageOverride& c) {
                            c.name = "Never";
                            c.days = 99;
                            c.note = "never";
                          })};
  const Programme other = deriveProgramme(job, twoStoreys(), someWorks());
  const Programme usual = deriveProgramme(twoStoreyJob(), twoStoreys(), someWorks());
  EXPECT_EQ(other.stages[2].name, "Trenches");
  EXPECT_EQ(other.stages[2].days, 7);
  EXPECT_EQ(other.stages[2].note, "narrow lane");
  EXPECT_EQ(other.stages[2].id, "dig-trenches") << "ids do not follow names";
  EXPECT_EQ(other.stages[3].days, 2.5);
  EXPECT_EQ(other.stages[3].name, usual.stages[3].name);
  for (const Stage& stage : other.stages) EXPECT_NE(stage.name, "Never");
}

TEST(Programme, EveryLiftHasItsCaution) {
  const Programme programme = deriveProgramme(twoStoreyJob(), twoStoreys(), someWorks());
  for (const StageKey& key : {StageKey{K::RaiseCorners, 0, 1}, StageKey{K::RaiseCorners, 1, 2}})
    EXPECT_NE(programme.stages[*programme.indexOf(key)].caution, "");
}

TEST(Programme, MoreSoilTakesMoreDays) {
  Works works;
  Element soil = cube("soil", whole({K::Existing}));
  soil.kind = ElementKind::Spoil;
  soil.removed = whole({K::CellarDig});
  soil.solid = box({0, 0, -2}, {5, 5, 0});
  add(works, soil);
  const auto daysOf = [&](const Works& w) {
    const Programme p = deriveProgramme(Job{}, twoStoreys(), w);
    return p.stages[*p.find("dig-cellar")].days;
  };
  const double small = daysOf(works);
  works.elements[0].solid = box({0, 0, -2}, {20, 20, 0});
  EXPECT_GT(daysOf(works), 4 * small);
  EXPECT_GE(small, 0.5);
  EXPECT_EQ(small * 2, static_cast<int>(small * 2)) << "halves of days";
}

TEST(Programme, DatesFollowTheJobsStart) {
  Job job = twoStoreyJob();
  job.programme.start = "2027-04-12";
  const Programme programme = deriveProgramme(job, twoStoreys(), someWorks());
  EXPECT_EQ(programme.stages.front().start, "2027-04-12");
  for (size_t i = 1; i < programme.stages.size(); ++i) {
    EXPECT_LE(programme.stages[i - 1].finish, programme.stages[i].finish);
    EXPECT_LE(programme.stages[i].start, programme.stages[i].finish);
    for (size_t before : programme.stages[i].after) {
      EXPECT_LE(programme.stages[before].finish, programme.stages[i].start);
    }
  }
}

TEST(Programme, PredecessorsComeEarlier) {
  const Programme programme = deriveProgramme(twoStoreyJob(), twoStoreys(), someWorks());
  for (size_t i = 0; i < programme.stages.size(); ++i) {
    EXPECT_EQ(programme.stages[i].after.empty(), i == 0) << programme.stages[i].id;
    for (size_t before : programme.stages[i].after) EXPECT_LT(before, i);
  }
}

}  // namespace
}  // namespace model
