#include "model/programme/calendar.h"

#include <gtest/gtest.h>

namespace model {
namespace {

Programme chain(const std::vector<std::pair<double, double>>& daysAndWaits) {
  Programme programme;
  for (size_t i = 0; i < daysAndWaits.size(); ++i) {
    Stage stage;
    stage.days = daysAndWaits[i].first;
    stage.waitDays = daysAndWaits[i].second;
    if (i > 0) stage.after = {i - 1};
    programme.stages.push_back(stage);
  }
  return programme;
}

TEST(Calendar, DatesReadAndWriteBack) {
  EXPECT_EQ(dayNumber("1970-01-01"), 0);
  EXPECT_EQ(dayNumber("2000-03-01"), 11017);
  EXPECT_EQ(isoDate(*dayNumber("2028-02-29")), "2028-02-29");
}

TEST(Calendar, WhatIsNoDateIsRefused) {
  for (const char* text : {"", "2027-02-29", "2027-13-01", "12-04-2027", "2027-4-12", "2027-04-12x",
                           "yesterday!", "2027/04/12"}) {
    EXPECT_FALSE(dayNumber(text)) << text;
  }
}

TEST(Calendar, WorkStopsOverTheWeekend) {
  // 2027-04-12 is a Monday.
  Programme programme = chain({{4, 0}, {2, 0}});
  setDates(programme, "2027-04-12");
  EXPECT_EQ(programme.stages[0].start, "2027-04-12");
  EXPECT_EQ(programme.stages[0].finish, "2027-04-15");
  EXPECT_EQ(programme.stages[1].start, "2027-04-16");   // Friday
  EXPECT_EQ(programme.stages[1].finish, "2027-04-19");  // Monday
}

TEST(Calendar, AStartOnASaturdayIsMonday) {
  Programme programme = chain({{1, 0}});
  setDates(programme, "2027-04-17");
  EXPECT_EQ(programme.stages[0].start, "2027-04-19");
}

TEST(Calendar, TwoHalvesShareADay) {
  Programme programme = chain({{0.5, 0}, {0.5, 0}, {0.5, 0}});
  setDates(programme, "2027-04-12");
  EXPECT_EQ(programme.stages[1].finish, "2027-04-12");
  EXPECT_EQ(programme.stages[2].start, "2027-04-13");
}

TEST(Calendar, WaitingRunsThroughTheWeekend) {
  // Poured on Thursday, three days' wait: Friday, Saturday, Sunday; on with it on Monday.
  Programme programme = chain({{1, 3}, {1, 0}});
  setDates(programme, "2027-04-15");
  EXPECT_EQ(programme.stages[1].start, "2027-04-19");
}

TEST(Calendar, AWaitHoldsUpOnlyWhatStandsOnIt) {
  Programme programme = chain({{1, 5}, {1, 0}, {1, 0}});
  programme.stages[1].after.clear();  // the crew goes to other work
  programme.stages[2].after = {0};
  setDates(programme, "2027-04-12");
  EXPECT_EQ(programme.stages[1].start, "2027-04-13");
  EXPECT_EQ(programme.stages[2].start, "2027-04-19");  // Tuesday to Saturday waits, then Monday
}

TEST(Calendar, WithoutAStartNothingIsDated) {
  Programme programme = chain({{1, 0}});
  setDates(programme, "");
  EXPECT_EQ(programme.stages[0].start, "");
  EXPECT_EQ(programme.stages[0].finish, "");
}

}  // namespace
}  // namespace model
