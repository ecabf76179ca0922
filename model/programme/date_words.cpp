#include "model/programme/date_words.h"

#include <array>
#include <chrono>
#include <cstdio>

#include "model/programme/calendar.h"

namespace model {
namespace {

constexpr std::array<const char*, 12> kMonths{"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                              "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
constexpr std::array<const char*, 7> kDays{"Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"};

enum class Parts { Day, DayAndMonth, All };

std::string wordsOf(long number, Parts parts) {
  const std::chrono::sys_days day{std::chrono::days{number}};
  const std::chrono::year_month_day date{day};
  char text[48];
  std::snprintf(text, sizeof text, "%s %u", kDays[std::chrono::weekday{day}.c_encoding()],
                unsigned(date.day()));
  std::string words = text;
  if (parts != Parts::Day) words += std::string(" ") + kMonths[unsigned(date.month()) - 1];
  if (parts == Parts::All) words += " " + std::to_string(int(date.year()));
  return words;
}

}  // namespace

std::string dateWords(const std::string& iso) {
  const auto number = dayNumber(iso);
  return number ? wordsOf(*number, Parts::All) : iso;
}

std::string dateSpanWords(const std::string& from, const std::string& to) {
  const auto first = dayNumber(from), last = dayNumber(to);
  if (!first || !last || *first == *last) return dateWords(from);
  const bool sameYear = from.substr(0, 4) == to.substr(0, 4);
  const bool sameMonth = sameYear && monthOf(*first) == monthOf(*last);
  return wordsOf(*first, sameMonth  ? Parts::Day
                         : sameYear ? Parts::DayAndMonth
                                    : Parts::All) +
         " to " + wordsOf(*last, Parts::All);
}

}  // namespace model
