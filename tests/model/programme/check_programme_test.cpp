#include "model/programme/check_programme.h"

#include <gtest/gtest.h>

#include "tests/model/programme/small_works.h"

namespace model {
namespace {

Problems problemsOf(std::vector<StageOverride> changes, const KeyPlaces& places = {}) {
  Job job;
  job.programme.stages = std::move(changes);
  return checkProgramme(deriveProgramme(job, twoStoreys(), worksIn({{StageKind::TrenchDig}})),
                        "a.toml", places);
}

TEST(CheckProgramme, AStageThatTheJobDoesNotHaveIsNamedWithItsNearest) {
  const Problems problems =
      problemsOf({inDays("dig-trenchs", 2.0)}, {{"programme.stage[0].stage", {7, 9}}});
  ASSERT_EQ(problems.size(), 1u);
  EXPECT_EQ(problems[0].severity, Severity::Warning);
  EXPECT_EQ(problems[0].place.line, 7);
  EXPECT_EQ(problems[0].place.column, 9);
  EXPECT_NE(problems[0].what.find("dig-trenchs"), std::string::npos);
  EXPECT_NE(problems[0].instead.find("\"dig-trenches\""), std::string::npos);
}

TEST(CheckProgramme, AStageChangedTwiceIsNoticedHoweverItIsNamed) {
  EXPECT_EQ(problemsOf({inDays("dig-trenches", 2.0), inDays("3", 3.0)}).size(), 1u);
}

TEST(CheckProgramme, WhatFitsIsSilent) {
  EXPECT_TRUE(problemsOf({inDays("dig-trenches", 2.0),
                          changed("1", [](StageOverride& c) { c.name = "Begin"; })})
                  .empty());
}

}  // namespace
}  // namespace model
