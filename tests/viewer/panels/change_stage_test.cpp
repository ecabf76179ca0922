#include "viewer/panels/change_stage.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>

#include "model/job/read_job.h"
#include "model/programme/calendar.h"
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

class ChangeDelivery : public ChangeStage {
 protected:
  void SetUp() override {
    ChangeStage::SetUp();
    std::ofstream(path_, std::ios::app)
        << "[programme]\nstart = \"2027-03-01\"\n"
           "[[programme.delivery]]\nwhat = \"Facing bricks\"\nstage = \"damp-course\"\n"
           "days_before = 3   # the yard wants a week\n"
           "[[programme.delivery]]\nwhat = \"Trusses\"\nstage = \"rafters\"\n";
    before_ = *textOfFile(path_);
    model_ = now();
  }
  // Of the chart, by the name of what is brought.
  static DeliveryMark markOf(const model::Model& model, const std::string& what) {
    for (const DeliveryMark& mark : deliveryMarks(model))
      if (model.job.programme.deliveries[mark.delivery].what == what) return mark;
    ADD_FAILURE() << "no " << what;
    return {};
  }
};

TEST_F(ChangeDelivery, MarksStandOnTheDatesOfTheProgramme) {
  ASSERT_EQ(deliveryMarks(model_).size(), 2u);
  for (const model::DatedDelivery& each : model_.programme.deliveries) {
    const DeliveryMark mark = markOf(model_, each.what);
    EXPECT_EQ(model::isoDate(mark.day), each.date);
    EXPECT_EQ(mark.stage, each.stage);
  }
  model::Job undated = model_.job;
  undated.programme.start = "";
  EXPECT_TRUE(deliveryMarks(model::buildModel(undated)).empty());
}

TEST_F(ChangeDelivery, GoesToAnotherDayInTheFileAndComesBack) {
  DatesEntry entry;
  const DeliveryMark bricks = markOf(model_, "Facing bricks");
  long day = bricks.day - 1;
  while (model::weekdayOf(day) > 4) --day;
  ASSERT_TRUE(entry.setDelivery(path_, model_, bricks, day)) << entry.notice;
  EXPECT_FALSE(entry.noticeWarns);
  EXPECT_NE(entry.notice.find("Facing bricks: "), std::string::npos) << entry.notice;
  const model::Model changed = now();
  EXPECT_EQ(changed.job.programme.deliveries[0].daysBefore, 4);
  EXPECT_EQ(markOf(changed, "Facing bricks").day, day);
  EXPECT_EQ(markOf(changed, "Trusses").day, markOf(model_, "Trusses").day);
  EXPECT_NE(textOfFile(path_)->find("days_before = 4   # the yard wants a week"),
            std::string::npos);
  EXPECT_TRUE(entry.takeBack(path_));
  EXPECT_EQ(*textOfFile(path_), before_);
}

TEST_F(ChangeDelivery, OfAnyDayUpToItsStageComesOnThatDayOrTheNextOneWorked) {
  const DeliveryMark trusses = markOf(model_, "Trusses");
  const long first = *model::dayNumber("2027-03-01");
  for (long day = first; day <= trusses.day; ++day) {
    std::string why;
    const auto days = daysBeforeOn(model_, trusses, day, why);
    ASSERT_TRUE(days) << why;
    const long worked = model::weekdayOf(day) > 4 ? day + 7 - model::weekdayOf(day) : day;
    EXPECT_EQ(deliveryDay(model_, trusses.stage, *days), worked) << model::isoDate(day);
  }
}

TEST_F(ChangeDelivery, IsRefusedAfterItsStageBeginsAndBeforeWorkDoes) {
  DatesEntry entry;
  const DeliveryMark trusses = markOf(model_, "Trusses");  // on the very day
  EXPECT_FALSE(entry.setDelivery(path_, model_, trusses, trusses.day + 1));
  EXPECT_TRUE(entry.noticeWarns);
  EXPECT_NE(entry.notice.find("after"), std::string::npos) << entry.notice;
  EXPECT_NE(entry.notice.find(model_.programme.stages[trusses.stage].name), std::string::npos);
  EXPECT_FALSE(entry.setDelivery(path_, model_, trusses, *model::dayNumber("2027-02-26")));
  EXPECT_NE(entry.notice.find("first day on site"), std::string::npos) << entry.notice;
  EXPECT_FALSE(entry.undo);
  EXPECT_EQ(*textOfFile(path_), before_);
}

TEST_F(ChangeDelivery, ThatIsAnotherByNowIsLeftAlone) {
  DatesEntry entry;
  std::string text = before_;
  text.replace(text.find("Facing bricks"), 13, "Engineering bricks");
  std::ofstream(path_) << text;
  const DeliveryMark bricks = markOf(model_, "Facing bricks");
  EXPECT_FALSE(entry.setDelivery(path_, model_, bricks, *model::dayNumber("2027-03-02")));
  EXPECT_TRUE(entry.noticeWarns);
  EXPECT_NE(entry.notice.find("changed since"), std::string::npos) << entry.notice;
  EXPECT_EQ(*textOfFile(path_), text);
}

}  // namespace
}  // namespace viewer
