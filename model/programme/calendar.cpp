#include "model/programme/calendar.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>
#include <cstdio>

namespace model {
namespace {

constexpr double kHair = 1e-6;
constexpr double kLongest = 100000;  // days; nothing on a site lasts longer

std::chrono::year_month_day dateOf(long day) {
  return std::chrono::year_month_day{std::chrono::sys_days{std::chrono::days{day}}};
}

long waitedDays(double days) {
  return static_cast<long>(std::ceil(std::clamp(days, -kLongest, kLongest) - kHair));
}

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
  const std::chrono::year_month_day date = dateOf(dayNumber);
  char text[32];
  std::snprintf(text, sizeof text, "%04d-%02u-%02u", static_cast<int>(date.year()),
                static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
  return text;
}

int weekdayOf(long dayNumber) {
  // 1970-01-01 was a Thursday.
  return static_cast<int>(((dayNumber + 3) % 7 + 7) % 7);
}

int monthOf(long dayNumber) {
  return static_cast<int>(static_cast<unsigned>(dateOf(dayNumber).month()));
}

double curingFactor(double celsius) {
  constexpr double kReference = 20, kDatum = -10;
  return std::max(1.0, (kReference - kDatum) / (std::max(celsius, 0.0) - kDatum));
}

WorkCalendar::WorkCalendar(const ProgrammeInput& input, long start) : start_(start), lost_{} {
  // A month's lost days are held against the days that its week works in 365.25 / 12 days.
  double inWeek = 0;
  for (size_t i = 0; i < week_.size(); ++i) {
    week_[i] = std::max(0.0, input.week[i]) / input.fullDay;
    inWeek += week_[i];
  }
  for (const CalendarException& each : input.exceptions) {
    const auto from = dayNumber(each.from);
    const auto to = each.to.empty() ? from : dayNumber(each.to);
    if (from && to) exceptions_.push_back({*from, *to, std::max(0.0, each.hours) / input.fullDay});
  }
  const double inMonth = inWeek / 7 * 365.25 / 12;
  for (const UsualMonth& each : input.months) {
    if (each.month < 1 || each.month > 12 || inMonth <= 0) continue;
    // However wet, something gets done.
    lost_[static_cast<size_t>(each.month - 1)] = std::clamp(each.lostDays / inMonth, 0.0, 0.9);
  }
  mornings_.push_back(0);
}

bool WorkCalendar::extend() const {
  constexpr long kAtOnce = 256;
  const long done = static_cast<long>(mornings_.size()) - 1;
  const long last = static_cast<long>(kYears * 365.25);
  if (done >= last) return false;
  const long count = std::min(kAtOnce, last - done);
  std::vector<double> share(static_cast<size_t>(count));
  for (long i = 0; i < count; ++i)
    share[static_cast<size_t>(i)] = week_[static_cast<size_t>(weekdayOf(start_ + done + i))];
  // Of several that have a day, the last given counts.
  for (const Exception& each : exceptions_) {
    const long from = std::max(each.from - start_ - done, 0L);
    const long to = std::min(each.to - start_ - done, count - 1);
    for (long i = from; i <= to; ++i) share[static_cast<size_t>(i)] = each.share;
  }
  for (long i = 0; i < count; ++i) {
    const auto month = static_cast<size_t>(monthOf(start_ + done + i) - 1);
    const double capacity = share[static_cast<size_t>(i)] * (1 - lost_[month]);
    if (capacity > 0) lastWorked_ = done + i;
    mornings_.push_back(mornings_.back() + capacity);
  }
  return true;
}

double WorkCalendar::capacityOf(long day) const { return eveningOf(day) - morningOf(day); }

double WorkCalendar::morningOf(long day) const {
  const long offset = std::max(day - start_, 0L);
  while (static_cast<size_t>(offset) >= mornings_.size() && extend()) {
  }
  return mornings_[std::min(static_cast<size_t>(offset), mornings_.size() - 1)];
}

double WorkCalendar::eveningOf(long day) const { return day < start_ ? 0 : morningOf(day + 1); }

long WorkCalendar::dayOf(double time) const {
  while (mornings_.back() <= time + kHair && extend()) {
  }
  // The first day whose evening lies past the time.
  const auto evening = std::upper_bound(mornings_.begin() + 1, mornings_.end(), time + kHair);
  if (evening == mornings_.end()) return start_ + lastWorked_;
  return start_ + static_cast<long>(evening - mornings_.begin()) - 1;
}

long WorkCalendar::lastDayBefore(double time) const {
  if (time <= kHair) return dayOf(0);
  while (mornings_.back() < time - kHair && extend()) {
  }
  const auto evening = std::lower_bound(mornings_.begin() + 1, mornings_.end(), time - kHair);
  if (evening == mornings_.end()) return start_ + lastWorked_;
  return start_ + static_cast<long>(evening - mornings_.begin()) - 1;
}

double WorkCalendar::afterWait(double finish, double days) const {
  return morningOf(lastDayBefore(finish) + 1 + waitedDays(days));
}

double WorkCalendar::afterWaitFromStart(double start, double days) const {
  return morningOf(dayOf(start) + waitedDays(days));
}

double WorkCalendar::latestBeforeWait(double by, double days) const {
  // The wait must be over by the morning of the day that has `by`.
  return eveningOf(dayOf(by) - 1 - waitedDays(days));
}

double WorkCalendar::latestStartBeforeWait(double by, double days) const {
  return std::max(0.0, eveningOf(dayOf(by) - waitedDays(days)) - 2 * kHair);
}

}  // namespace model
