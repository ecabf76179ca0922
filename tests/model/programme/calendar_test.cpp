#include "model/programme/calendar.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "model/programme/plan_stages.h"

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

void setDates(Programme& programme, const std::string& start, ProgrammeInput input = {}) {
  input.start = start;
  schedule(input, programme);
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

long day(const char* date) { return *dayNumber(date); }

TEST(Calendar, WeekdaysAndMonthsAreThoseOfTheAlmanac) {
  EXPECT_EQ(weekdayOf(day("1970-01-01")), 3);  // a Thursday
  EXPECT_EQ(weekdayOf(day("2000-02-29")), 1);  // a Tuesday
  EXPECT_EQ(weekdayOf(day("2027-04-12")), 0);
  EXPECT_EQ(weekdayOf(day("1969-12-31")), 2);
  EXPECT_EQ(monthOf(day("2028-02-29")), 2);
  EXPECT_EQ(monthOf(day("1969-12-31")), 12);
}

TEST(Calendar, HolidaysAreNotWorkedAndTakeNoTime) {
  ProgrammeInput input;
  input.exceptions = {{"2027-04-14", "2027-04-16", 0, "Holiday"}};
  Programme programme = chain({{3, 0}, {1, 0}});
  setDates(programme, "2027-04-12", input);
  EXPECT_EQ(programme.stages[0].finish, "2027-04-19");  // Monday, Tuesday, and the Monday after
  EXPECT_EQ(programme.stages[1].start, "2027-04-20");
}

TEST(Calendar, AFirstDayOnAHolidayIsTheDayAfter) {
  ProgrammeInput input;
  input.exceptions = {{"2027-12-25", "2028-01-03", 0, "Holiday"}};
  Programme programme = chain({{1, 0}});
  setDates(programme, "2027-12-27", input);
  EXPECT_EQ(programme.stages[0].start, "2028-01-04");
}

TEST(Calendar, ShortDaysAndWorkedSaturdaysCountByTheirHours) {
  ProgrammeInput input;
  input.week[4] = 4;  // Fridays: half
  input.exceptions = {{"2027-04-17", "", 4, "A Saturday worked"}};
  const WorkCalendar calendar(input, day("2027-04-12"));
  EXPECT_DOUBLE_EQ(calendar.capacityOf(day("2027-04-16")), 0.5);
  EXPECT_DOUBLE_EQ(calendar.capacityOf(day("2027-04-17")), 0.5);
  EXPECT_DOUBLE_EQ(calendar.capacityOf(day("2027-04-24")), 0);
  Programme programme = chain({{5, 0}, {1, 0}});
  setDates(programme, "2027-04-12", input);
  EXPECT_EQ(programme.stages[0].finish, "2027-04-17");
  EXPECT_EQ(programme.stages[1].start, "2027-04-19");
}

TEST(Calendar, OfTwoThatHaveADayTheLastCounts) {
  ProgrammeInput input;
  input.exceptions = {{"2027-04-12", "2027-04-30", 0, "Shut"}, {"2027-04-14", "", 8, "But for"}};
  const WorkCalendar calendar(input, day("2027-04-12"));
  EXPECT_DOUBLE_EQ(calendar.capacityOf(day("2027-04-13")), 0);
  EXPECT_DOUBLE_EQ(calendar.capacityOf(day("2027-04-14")), 1);
  EXPECT_EQ(calendar.dayOf(0), day("2027-04-14"));
}

TEST(Calendar, AWeekThatIsNeverWorkedEndsSomewhere) {
  ProgrammeInput input;
  input.week.fill(0);
  Programme programme = chain({{1, 3}, {1, 0}});
  setDates(programme, "2027-04-12", input);
  EXPECT_FALSE(programme.stages[1].finish.empty());
}

// 22 working days of 8 hours in a month of a five-day week; with the fifth of them lost a day's
// work takes 1.25 days.
TEST(Calendar, WetMonthsGetLessDone) {
  ProgrammeInput input;
  const double inMonth = 5.0 / 7 * 365.25 / 12;
  input.months = {{1, std::nullopt, inMonth / 5}};
  const WorkCalendar calendar(input, day("2027-01-04"));
  EXPECT_NEAR(calendar.capacityOf(day("2027-01-04")), 0.8, 1e-12);
  EXPECT_NEAR(calendar.capacityOf(day("2027-02-01")), 1, 1e-12);
  Programme programme = chain({{4, 0}});
  setDates(programme, "2027-01-04", input);
  EXPECT_EQ(programme.stages[0].finish, "2027-01-08");
}

// Maturity at a temperature over that at 20 degrees, datum -10 (Nurse and Saul): 30 over 15 at 5
// degrees, 30 over 20 at 10; nothing is gained from heat.
TEST(Calendar, WaitsGrowInTheCold) {
  EXPECT_DOUBLE_EQ(curingFactor(20), 1);
  EXPECT_DOUBLE_EQ(curingFactor(5), 2);
  EXPECT_DOUBLE_EQ(curingFactor(10), 1.5);
  EXPECT_DOUBLE_EQ(curingFactor(35), 1);
  EXPECT_DOUBLE_EQ(curingFactor(-15), 3);

  ProgrammeInput input;
  input.months = {{1, 5.0, 0}};
  Programme winter = chain({{1, 3}, {1, 0}});
  setDates(winter, "2027-01-04", input);
  EXPECT_EQ(winter.stages[0].waitDays, 6);
  EXPECT_EQ(winter.stages[1].start, "2027-01-11");
  Programme summer = chain({{1, 3}, {1, 0}});
  setDates(summer, "2027-07-05", input);
  EXPECT_EQ(summer.stages[0].waitDays, 3);
  EXPECT_EQ(summer.stages[1].start, "2027-07-09");
}

TEST(Calendar, ClocksThatGoForwardAndBackMoveNoDate) {
  // Over the last Sundays of March and of October, and over a leap day.
  for (const auto& [from, to] :
       {std::pair{"2027-03-26", "2027-03-29"}, std::pair{"2027-10-29", "2027-11-01"},
        std::pair{"2028-02-28", "2028-02-29"}}) {
    Programme programme = chain({{1, 0}, {1, 0}});
    setDates(programme, from);
    EXPECT_EQ(programme.stages[1].start, to);
  }
}

RC_GTEST_PROP(Calendar, TimesAndDatesFitEachOther, ()) {
  ProgrammeInput input;
  for (double& hours : input.week) hours = *rc::gen::element(0.0, 4.0, 8.0, 10.0);
  RC_PRE(std::any_of(input.week.begin(), input.week.end(), [](double h) { return h > 0; }));
  const long start = day("2027-01-01") + *rc::gen::inRange(0, 400);
  for (int i = 0, n = *rc::gen::inRange(0, 5); i < n; ++i) {
    const long from = start + *rc::gen::inRange(-10, 60);
    input.exceptions.push_back({isoDate(from), isoDate(from + *rc::gen::inRange(0, 9)),
                                *rc::gen::element(0.0, 4.0, 8.0), ""});
  }
  const WorkCalendar calendar(input, start);
  const double time = *rc::gen::inRange(0, 400) / 4.0;
  // Day by day, from the start.
  double gone = 0;
  long at = start;
  while (gone + calendar.capacityOf(at) <= time + 1e-6) gone += calendar.capacityOf(at++);
  RC_ASSERT(calendar.dayOf(time) == at);
  RC_ASSERT(std::abs(calendar.morningOf(at) - gone) < 1e-6);
  RC_ASSERT(calendar.lastDayBefore(time) <= at);
  RC_ASSERT(calendar.eveningOf(calendar.lastDayBefore(time)) >= time - 1e-6);
  const int wait = *rc::gen::inRange(0, 15);
  const double after = calendar.afterWait(time, wait);
  RC_ASSERT(after >= time - 1e-6);
  // The latest that is still in time for it is in time, and no less late than what was asked with.
  const double latest = calendar.latestBeforeWait(after, wait);
  RC_ASSERT(latest >= time - 1e-6);
  RC_ASSERT(calendar.afterWait(latest, wait) <= after + 1e-6);
}

}  // namespace
}  // namespace model
