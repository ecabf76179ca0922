// Working days and the dates they fall on.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "model/job/programme_input.h"

namespace model {

// Days since 1970-01-01 of an ISO date, "2027-04-12". Nothing when it is not a date.
std::optional<long> dayNumber(const std::string& isoDate);
std::string isoDate(long dayNumber);
// 0 is Monday.
int weekdayOf(long dayNumber);
// 1 to 12.
int monthOf(long dayNumber);

// The dates on which work is done, and how much of it. Working time is counted in working days from
// the morning of the first day on site: half a day's hours are half a working day, and in a month
// that loses days to weather each of its days counts by so much less.
class WorkCalendar {
 public:
  // `start` is the first day on site; work begins on the first day that is worked from then on. A
  // calendar that hardly ever works is cut off after kYears, when all time is that of its last day.
  WorkCalendar(const ProgrammeInput& input, long start);

  static constexpr int kYears = 60;

  // Working days that can be done on a date: 0, 0.5, 1.
  double capacityOf(long day) const;
  // Working time at the morning of a date; the same as that of the next day worked.
  double morningOf(long day) const;
  // Working time at the end of a date.
  double eveningOf(long day) const;
  // The date of work that begins at a time: at the very end of a day it is the next one.
  long dayOf(double time) const;
  // The last date that has some of the work ending at a time.
  long lastDayBefore(double time) const;
  // The time from which a wait of so many days of the calendar is over, for work that ended (or
  // began) at a time: mornings only.
  double afterWait(double finish, double days) const;
  double afterWaitFromStart(double start, double days) const;
  // The latest time from which the wait is over in time for `by`; before all work when there is
  // none.
  double latestBeforeWait(double by, double days) const;
  double latestStartBeforeWait(double by, double days) const;

 private:
  struct Exception {
    long from, to;
    double share;  // of a working day
  };
  bool extend() const;  // by some more days; false at the cut-off

  long start_;
  std::array<double, 7> week_{};  // working days that can be done on each day of it
  std::vector<Exception> exceptions_;
  std::array<double, 12> lost_;  // share of each month's time that weather takes
  // Filled in as far as was asked for, so not to be shared between threads.
  mutable std::vector<double> mornings_;  // by day from start_: working time at its morning
  mutable long lastWorked_ = 0;           // the last of them on which something is done
};

// How much longer concrete and mortar take to gain the strength that they have after a day at 20
// degrees, at `celsius`: maturity after Nurse and Saul with the datum at -10 degrees, as
// ASTM C1074 and ACI 306R have it. Never less than 1: heat is no reason to wait less. Colder than
// 0 counts as 0, as nothing is placed in frost.
double curingFactor(double celsius);

}  // namespace model
