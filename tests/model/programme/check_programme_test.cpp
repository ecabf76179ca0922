#include "model/programme/check_programme.h"

#include <gtest/gtest.h>

#include "tests/model/programme/small_works.h"

namespace model {
namespace {

Programme withTrenches() {
  return deriveProgramme(Job{}, twoStoreys(), worksIn({{StageKind::TrenchDig}}));
}

TEST(CheckProgramme, AStageThatTheJobDoesNotHaveIsNamedWithItsNearest) {
  Job job;
  job.programme.stages = {{"dig-trenchs", std::nullopt, 2.0, std::nullopt}};
  const Problems problems =
      checkProgramme(job, withTrenches(), "a.toml", {{"programme.stage[0].stage", {7, 9}}});
  ASSERT_EQ(problems.size(), 1u);
  EXPECT_EQ(problems[0].severity, Severity::Warning);
  EXPECT_EQ(problems[0].place.line, 7);
  EXPECT_EQ(problems[0].place.column, 9);
  EXPECT_NE(problems[0].what.find("dig-trenchs"), std::string::npos);
  EXPECT_NE(problems[0].instead.find("\"dig-trenches\""), std::string::npos);
}

TEST(CheckProgramme, AStageChangedTwiceIsNoticedHoweverItIsNamed) {
  Job job;
  job.programme.stages = {{"dig-trenches", std::nullopt, 2.0, std::nullopt},
                          {"3", std::nullopt, 3.0, std::nullopt}};
  EXPECT_EQ(checkProgramme(job, withTrenches(), "a.toml", {}).size(), 1u);
}

TEST(CheckProgramme, WhatFitsIsSilent) {
  Job job;
  job.programme.stages = {{"dig-trenches", std::nullopt, 2.0, std::nullopt},
                          {"1", "Begin", std::nullopt, std::nullopt}};
  EXPECT_TRUE(checkProgramme(job, withTrenches(), "a.toml", {}).empty());
}

}  // namespace
}  // namespace model
