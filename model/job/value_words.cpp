#include "model/job/value_words.h"

#include <charconv>
#include <cmath>

#include "model/job/lengths.h"

namespace model {

namespace {

// Fixed decimals with zeros at the end dropped.
std::string plain(double value, int places) {
  if (std::abs(value) > 1e12)
    return value > 0 ? "over a million million" : "under minus a million million";
  char text[64];
  const auto end = std::to_chars(text, text + sizeof text, value, std::chars_format::fixed, places);
  std::string shown(text, end.ptr);
  if (shown.find('.') != std::string::npos) {
    shown.erase(shown.find_last_not_of('0') + 1);
    if (shown.back() == '.') shown.pop_back();
  }
  return shown == "-0" ? "0" : shown;
}

std::string unitOf(ValueKind kind) {
  switch (kind) {
    case ValueKind::Degrees:
    case ValueKind::Pitch:
      return " degrees";
    case ValueKind::Days:
      return " days";
    default:
      return "";
  }
}

}  // namespace

std::string lengthWords(double metres) { return plain(metres * 1000, 4) + " mm"; }

std::string levelWords(double metres) {
  if (std::abs(metres) > 1e9) return plain(metres, 3) + " m";
  char text[64];
  const auto end = std::to_chars(text, text + sizeof text, metres, std::chars_format::fixed, 3);
  std::string shown(text, end.ptr);
  if (shown == "-0.000") shown = "0.000";
  if (shown != "0.000" && shown.front() != '-') shown.insert(0, "+");
  return shown + " m";
}

std::string metresWords(double metres) {
  std::string words = levelWords(metres);
  if (words.front() == '+') words.erase(0, 1);
  return words;
}

std::string valueWords(const KeySpec& key, double value) {
  if (key.kind == ValueKind::Length) return lengthWords(value);
  if (key.kind == ValueKind::Level) return levelWords(value);
  if (key.kind == ValueKind::Metres) return metresWords(value);
  return plain(value, 4) + unitOf(key.kind);
}

std::string limitsWords(const KeySpec& key) {
  return valueWords(key, key.low) + " to " + valueWords(key, key.high);
}

std::string neededWords(const KeySpec& key) {
  const std::string like = std::string(", like ") + key.example;
  switch (key.kind) {
    case ValueKind::Length:
      return "a length in mm is needed" + like + ", or in quotes with its unit";
    case ValueKind::Level:
      return "a level in metres is needed" + like + ", or in quotes with its unit";
    case ValueKind::Metres:
      return "a number of metres is needed" + like + ", or in quotes with its unit";
    case ValueKind::Degrees:
      return "an angle in degrees is needed" + like;
    case ValueKind::Pitch:
      return "a pitch in degrees is needed" + like + ", or \"8 in 12\"";
    case ValueKind::Factor:
      return "a number is needed" + like;
    case ValueKind::Days:
      return "a number of days is needed" + like;
    case ValueKind::Count:
      return "a whole number is needed" + like;
    case ValueKind::Text:
    case ValueKind::StoreyRef:
      return "text in quotes is needed" + like;
    case ValueKind::Date:
      return "a day is needed as year-month-day" + like;
    case ValueKind::Point:
      return "a point [x, y] in mm is needed" + like;
    case ValueKind::Corners:
      return "a list of points in mm is needed" + like;
    case ValueKind::Choice:
      break;
  }
  std::string words;
  for (const std::string& choice : choicesOf(key)) {
    words += (words.empty() ? "" : ", ") + ("\"" + choice + "\"");
  }
  return "it is one of " + words;
}

std::string unitMixUpWords(const KeySpec& key, double value) {
  const auto fits = [&](double other) { return other >= key.low && other <= key.high; };
  if (key.kind == ValueKind::Length && value != 0 && fits(value * 1000)) {
    return "lengths are in mm; for " + plain(value * 1000, 4) + " m write " +
           lengthValueText(value * 1000);
  }
  const bool level = key.kind == ValueKind::Level;
  if ((level || key.kind == ValueKind::Metres) && fits(value / 1000)) {
    return std::string(level ? "levels are" : "it is") + " in metres; for " + plain(value, 3) +
           " mm write " + levelValueText(value / 1000);
  }
  return {};
}

std::string rangeWords(const KeySpec& key, double value) {
  const std::string mixUp = unitMixUpWords(key, value);
  if (!mixUp.empty()) return mixUp;
  if (value < key.low) return "at least " + valueWords(key, key.low) + " is needed";
  return "at most " + valueWords(key, key.high) + " is allowed";
}

bool isCalendarDay(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return false;
  for (const size_t i : {0, 1, 2, 3, 5, 6, 8, 9}) {
    if (text[i] < '0' || text[i] > '9') return false;
  }
  const auto number = [&](size_t from, size_t count) {
    int value = 0;
    for (size_t i = from; i < from + count; ++i) value = value * 10 + (text[i] - '0');
    return value;
  };
  const int year = number(0, 4), month = number(5, 2), day = number(8, 2);
  if (year < 1900 || year > 2199 || month < 1 || month > 12 || day < 1) return false;
  constexpr int kDays[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
  return day <= kDays[month - 1] + (month == 2 && leap ? 1 : 0);
}

}  // namespace model
