#include "model/programme/calendar.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>

namespace model {
namespace {

constexpr double kHair = 1e-6;
constexpr double kLongest = 100000;  // days; nothing on a site lasts longer

bool isWorkingDay(long day) {
  // 1970-01-01 was a Thursday: 0 = Monday.
  const long weekday = ((day + 3) % 7 + 7) % 7;
  return weekday < 5;
}

long nextWorkingDay(long day) {
  while (!isWorkingDay(day)) ++day;
  return day;
}

// Working time is counted in days from the first working day; whole numbers are mornings.
class WorkingTime {
 public:
  explicit WorkingTime(long start) : first_(nextWorkingDay(start)), weekday_((first_ + 3) % 7) {
    if (weekday_ < 0) weekday_ += 7;
  }
  long dayOf(double time) const {
    const long working = static_cast<long>(std::floor(time + kHair)) + weekday_;
    return first_ - weekday_ + working / 5 * 7 + working % 5;
  }
  // The last day that has some of the work ending at `time`.
  long lastDayBefore(double time) const {
    return dayOf(std::max(0.0, std::ceil(time - kHair) - 1));
  }
  double morningOf(long day) const {
    const long sinceMonday = nextWorkingDay(day) - (first_ - weekday_);
    const long workingDays = sinceMonday / 7 * 5 + sinceMonday % 7;
    return static_cast<double>(workingDays - weekday_);
  }

 private:
  long first_;
  long weekday_;
};

}  // namespace

std::optional<long> dayNumber(const std::string& isoDate) {
  int year = 0;
  unsigned month = 0, day = 0;
  int used = 0;
  if (isoDate.size() != 10) return std::nullopt;
  if (std::sscanf(isoDate.c_str(), "%4d-%2u-%2u%n", &year, &month, &day, &used) != 3) {
    return std::nullopt;
  }
  if (used != 10) return std::nullopt;
  const std::chrono::year_month_day date{std::chrono::year{year}, std::chrono::month{month},
                                         std::chrono::day{day}};
  if (!date.ok()) return std::nullopt;
  return std::chrono::sys_days{date}.time_since_epoch().count();
}

std::string isoDate(long dayNumber) {
  const std::chrono::year_month_day date{std::chrono::sys_days{std::chrono::days{dayNumber}}};
  char text[32];
  std::snprintf(text, sizeof text, "%04d-%02u-%02u", static_cast<int>(date.year()),
                static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
  return text;
}

void setDates(Programme& programme, const std::string& start) {
  const auto first = dayNumber(start);
  if (!first) return;
  const WorkingTime clock(*first);
  std::vector<long> free;  // per stage: the first day on which what stands on it may start
  double crew = 0;         // when the crew is free
  for (Stage& stage : programme.stages) {
    double begin = crew;
    for (size_t before : stage.after) {
      if (before >= free.size() || programme.stages[before].waitDays <= 0) continue;
      begin = std::max(begin, clock.morningOf(free[before]));
    }
    const double end = begin + std::clamp(stage.days, 0.0, kLongest);
    const long finish = std::max(clock.dayOf(begin), clock.lastDayBefore(end));
    stage.start = isoDate(clock.dayOf(begin));
    stage.finish = isoDate(finish);
    const double wait = std::clamp(stage.waitDays, 0.0, kLongest);
    free.push_back(finish + 1 + static_cast<long>(std::ceil(wait - kHair)));
    crew = end;
  }
}

}  // namespace model
