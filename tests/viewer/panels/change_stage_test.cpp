#include "viewer/panels/change_stage.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>

#include "model/job/read_job.h"
#include "tests/support/folders.h"
#include "viewer/panels/change_job_file.h"
#include "viewer/panels/dates_entry.h"

namespace viewer {
namespace {

class ChangeStage : public ::testing::Test {
 protected:
  void SetUp() override {
    const std::string demo = test_support::sourceFolder() + "/assets/jobs/garage.toml";
    path_ = (std::filesystem::temp_directory_path() /
             ("stringcourse_stage_" + std::to_string(getpid()) + ".toml"))
                .string();
    std::filesystem::copy_file(demo, path_, std::filesystem::copy_options::overwrite_existing);
    before_ = *textOfFile(path_);
    model_ = model::buildModel(*model::readJobFile(path_).job);
  }
  void TearDown() override { std::filesystem::remove(path_); }
  size_t stage(const char* id) const { return *model_.programme.find(id); }
  model::Model now() const { return model::buildModel(*model::readJobFile(path_).job); }

  std::string path_, before_;
  model::Model model_;
};

TEST_F(ChangeStage, DaysGoIntoTheFileAndComeBackOut) {
  DatesEntry entry;
  EXPECT_TRUE(entry.setDays(path_, model_, stage("rafters"), 7.5));
  EXPECT_FALSE(entry.noticeWarns) << entry.notice;
  model::Model changed = now();
  EXPECT_EQ(changed.programme.stages[stage("rafters")].days, 7.5);
  // A second change of the same stage changes the same entry.
  const size_t entries = changed.job.programme.stages.size();
  EXPECT_TRUE(entry.setDays(path_, changed, stage("rafters"), 9));
  changed = now();
  EXPECT_EQ(changed.job.programme.stages.size(), entries);
  EXPECT_EQ(changed.programme.stages[stage("rafters")].days, 9);
  EXPECT_NE(textOfFile(path_)->find(before_.substr(0, 200)), std::string::npos);
  EXPECT_TRUE(entry.takeBack(path_));
  EXPECT_EQ(now().programme.stages[stage("rafters")].days, 7.5);
}

TEST_F(ChangeStage, TheSameDaysChangeNothing) {
  DatesEntry entry;
  EXPECT_FALSE(entry.setDays(path_, model_, 0, model_.programme.stages[0].days));
  EXPECT_EQ(*textOfFile(path_), before_);
}

TEST_F(ChangeStage, AStageIsMovedOrRefusedWithTheReason) {
  DatesEntry entry;
  EXPECT_FALSE(entry.setFollows(path_, model_, stage("pour-foundations"), stage("rafters")));
  EXPECT_TRUE(entry.noticeWarns);
  EXPECT_NE(entry.notice.find("bears on"), std::string::npos) << entry.notice;
  EXPECT_EQ(*textOfFile(path_), before_);
  EXPECT_TRUE(entry.setFollows(path_, model_, stage("windows-and-doors"), stage("strike-scaffold")))
      << entry.notice;
  const model::Model changed = now();
  EXPECT_EQ(*changed.programme.find("windows-and-doors"),
            *changed.programme.find("strike-scaffold") + 1);
}

TEST_F(ChangeStage, WhatWasChangedSinceIsNotOverwritten) {
  DatesEntry entry;
  ASSERT_TRUE(entry.setDays(path_, model_, stage("rafters"), 7.5));
  std::ofstream(path_, std::ios::app) << "# a word of the user's\n";
  const std::string theirs = *textOfFile(path_);
  EXPECT_FALSE(entry.takeBack(path_));
  EXPECT_TRUE(entry.noticeWarns);
  EXPECT_EQ(*textOfFile(path_), theirs);
}

TEST_F(ChangeStage, AFileWithErrorsIsLeftAlone) {
  std::ofstream(path_, std::ios::app) << "[nonsense\n";
  const std::string broken = *textOfFile(path_);
  DatesEntry entry;
  EXPECT_FALSE(entry.setDays(path_, model_, stage("rafters"), 7.5));
  EXPECT_TRUE(entry.noticeWarns);
  EXPECT_EQ(*textOfFile(path_), broken);
}

}  // namespace
}  // namespace viewer
