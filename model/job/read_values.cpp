#include "model/job/read_values.h"

#include <cmath>

#include "model/job/lengths.h"
#include "model/job/nearest.h"
#include "model/job/value_words.h"

namespace model {

namespace {

constexpr double kFarthest = 10000;  // metres from the job's origin
constexpr size_t kMostCorners = 200;
constexpr size_t kLongestText = 200;  // characters

const char* typeWords(const toml::node& node) {
  switch (node.type()) {
    case toml::node_type::string:
      return "text";
    case toml::node_type::boolean:
      return "true or false";
    case toml::node_type::array:
      return "a list";
    case toml::node_type::table:
      return "a section";
    case toml::node_type::date:
    case toml::node_type::time:
    case toml::node_type::date_time:
      return "a date";
    default:
      return "a number";
  }
}

bool isMetres(ValueKind kind) { return kind == ValueKind::Level || kind == ValueKind::Metres; }

bool isLengthLike(ValueKind kind) { return kind == ValueKind::Length || isMetres(kind); }

bool isAngle(ValueKind kind) { return kind == ValueKind::Degrees || kind == ValueKind::Pitch; }

// A bare number; nothing for other types. Whole numbers too large for a double lose digits here,
// and are out of every range anyway.
std::optional<double> bareNumber(const toml::node& node) {
  if (const auto* whole = node.as_integer()) return static_cast<double>(whole->get());
  if (const auto* decimal = node.as_floating_point()) return decimal->get();
  return std::nullopt;
}

// No length in a job is both under 5 mm and sensible in metres, except when a unit says so.
bool looksLikeMetres(const KeySpec& key, double metres) {
  const double thousandfold = std::abs(metres) * 1000;
  return key.kind == ValueKind::Length && key.slot && metres != 0 && thousandfold < 5 &&
         thousandfold >= key.low && thousandfold <= key.high;
}

bool isPlainNumber(const std::string& text) {
  const size_t first = text.find_first_not_of("+-");
  return first != std::string::npos &&
         text.find_first_not_of("0123456789.", first) == std::string::npos;
}

// How to say in which unit the number in the quotes is.
std::string unitWords(ValueKind kind, const std::string& number) {
  const bool metres = isMetres(kind);
  return "write " + number + " without quotes for " + (metres ? "metres" : "millimetres") +
         ", or with its unit in them: \"" + number + (metres ? " m\"" : " mm\"");
}

// A number as written: bare or, for lengths and angles, quoted with its unit. Nothing, with the
// problem added, when it is neither.
std::optional<double> readNumber(const KeySpec& key, const toml::node& node, Place place,
                                 const std::string& shown, ReadContext& context) {
  if (const auto bare = bareNumber(node)) {
    const double value = key.kind == ValueKind::Length ? fromMillimetres(*bare) : *bare;
    if (!std::isfinite(value)) {
      context.error(place, shown + " is not a finite number", neededWords(key));
      return std::nullopt;
    }
    if (looksLikeMetres(key, value)) {
      context.error(place, shown + " is " + valueWords(key, value), unitMixUpWords(key, value));
      return std::nullopt;
    }
    return value;
  }
  const auto* text = node.as_string();
  if (!text || !(isLengthLike(key.kind) || isAngle(key.kind))) {
    context.error(place, shown + " is " + typeWords(node), neededWords(key));
    return std::nullopt;
  }
  const ReadValue read = isLengthLike(key.kind)         ? readLength(text->get())
                         : key.kind == ValueKind::Pitch ? readPitch(text->get())
                                                        : readDegrees(text->get());
  if (!read.value) {
    context.error(place, shown + " cannot be read: " + read.fault,
                  isPlainNumber(text->get()) && isLengthLike(key.kind)
                      ? unitWords(key.kind, text->get())
                      : neededWords(key));
  }
  return read.value;
}

bool inRange(const KeySpec& key, double value) { return value >= key.low && value <= key.high; }

bool readNumberInto(const KeySpec& key, const Slot& slot, const toml::node& node, Place place,
                    const std::string& shown, ReadContext& context) {
  const auto value = readNumber(key, node, place, shown, context);
  if (!value) return false;
  if (!inRange(key, *value)) {
    context.error(place, shown + " is " + valueWords(key, *value), rangeWords(key, *value));
    return false;
  }
  if (key.kind == ValueKind::Count && *value != std::floor(*value)) {
    context.error(place, shown + " is " + valueWords(key, *value), neededWords(key));
    return false;
  }
  if (auto* const* count = std::get_if<int*>(&slot)) **count = static_cast<int>(*value);
  if (auto* const* plain = std::get_if<double*>(&slot)) **plain = *value;
  if (auto* const* maybe = std::get_if<std::optional<double>*>(&slot)) **maybe = *value;
  return true;
}

size_t characters(const std::string& text) {
  size_t count = 0;
  for (const char c : text) count += (static_cast<unsigned char>(c) & 0xC0) != 0x80;
  return count;
}

bool readTextInto(const Slot& slot, const std::string& text, Place place, const std::string& shown,
                  ReadContext& context) {
  if (characters(text) > kLongestText) {
    context.error(place, shown + " is too long", "at most 200 characters fit on a drawing");
    return false;
  }
  for (const char c : text) {
    if (static_cast<unsigned char>(c) < 0x20 || c == 0x7F) {
      context.error(place, shown + " has a line break or another control character in it",
                    "write it on one line");
      return false;
    }
  }
  if (auto* const* plain = std::get_if<std::string*>(&slot)) **plain = text;
  if (auto* const* maybe = std::get_if<std::optional<std::string>*>(&slot)) **maybe = text;
  return true;
}

bool readChoiceInto(const KeySpec& key, const Slot& slot, const std::string& word, Place place,
                    const std::string& shown, ReadContext& context) {
  const std::vector<std::string> choices = choicesOf(key);
  for (size_t i = 0; i < choices.size(); ++i) {
    if (choices[i] != word) continue;
    setChoice(slot, static_cast<int>(i));
    return true;
  }
  const auto near = nearest(word, choices);
  context.error(place, shown + " is \"" + word + "\"",
                near ? "did you mean \"" + *near + "\"?" : neededWords(key));
  return false;
}

std::string twoDigits(unsigned number) { return (number < 10 ? "0" : "") + std::to_string(number); }

bool readDateInto(const KeySpec& key, const Slot& slot, const toml::node& node, Place place,
                  const std::string& shown, ReadContext& context) {
  std::string text;
  if (const auto date = node.value<toml::date>(); date && node.is_date()) {
    text = std::to_string(date->year) + "-" + twoDigits(date->month) + "-" + twoDigits(date->day);
  } else if (const auto quoted = node.value<std::string>()) {
    text = *quoted;
  } else {
    context.error(place, shown + " is " + typeWords(node), neededWords(key));
    return false;
  }
  if (!text.empty() && !isCalendarDay(text)) {
    context.error(place, shown + " is \"" + text.substr(0, kLongestText) + "\", which is no date",
                  neededWords(key));
    return false;
  }
  **std::get_if<std::string*>(&slot) = text;
  return true;
}

std::optional<Vec2> readPoint(const toml::node& node, const std::string& shown,
                              ReadContext& context) {
  static const KeySpec kCoordinate{"",        "",    ValueKind::Length, nullptr, -kFarthest,
                                   kFarthest, "910", "a coordinate"};
  const toml::array* pair = node.as_array();
  if (!pair || pair->size() != 2) {
    context.error(
        placeOf(node),
        shown + " is " + (pair ? "a list of " + std::to_string(pair->size()) : typeWords(node)),
        "a point is two numbers in mm, like [3590, 0]");
    return std::nullopt;
  }
  double xy[2] = {0, 0};
  for (size_t i = 0; i < 2; ++i) {
    const toml::node& number = *pair->get(i);
    double* target = &xy[i];
    if (!readNumberInto(kCoordinate, Slot(target), number, placeOf(number), shown, context)) {
      return std::nullopt;
    }
  }
  return Vec2{xy[0], xy[1]};
}

bool readCornersInto(const KeySpec& key, Outline& outline, const toml::node& node, Place place,
                     const std::string& shown, const std::string& path, ReadContext& context) {
  const toml::array* list = node.as_array();
  if (!list) {
    context.error(place, shown + " is " + typeWords(node), neededWords(key));
    return false;
  }
  if (list->size() > kMostCorners) {
    context.error(placeOf(*list->get(kMostCorners)), shown + " has over 200 points",
                  "200 corners are the most");
    return false;
  }
  Outline read;
  bool good = true;
  for (size_t i = 0; i < list->size(); ++i) {
    const toml::node& item = *list->get(i);
    context.places[path + "[" + std::to_string(i) + "]"] = placeOf(item);
    const auto point = readPoint(item, shown + ", point " + std::to_string(i + 1), context);
    if (point) read.push_back(*point);
    good = good && point;
  }
  if (good) outline = std::move(read);
  return good;
}

}  // namespace

void ReadContext::error(Place place, std::string what, std::string instead) {
  problems.push_back({file, place, Severity::Error, std::move(what), std::move(instead)});
}

Place placeOf(const toml::node& node) {
  return {static_cast<int>(node.source().begin.line), static_cast<int>(node.source().begin.column)};
}

Place placeOf(const toml::key& key) {
  return {static_cast<int>(key.source().begin.line), static_cast<int>(key.source().begin.column)};
}

bool readInto(const KeySpec& key, const Slot& slot, const toml::node& node, Place place,
              const std::string& shown, const std::string& path, ReadContext& context) {
  switch (key.kind) {
    case ValueKind::Length:
    case ValueKind::Level:
    case ValueKind::Metres:
    case ValueKind::Degrees:
    case ValueKind::Pitch:
    case ValueKind::Factor:
    case ValueKind::Days:
    case ValueKind::Count:
      return readNumberInto(key, slot, node, place, shown, context);
    case ValueKind::Date:
      return readDateInto(key, slot, node, place, shown, context);
    case ValueKind::Corners:
      return readCornersInto(key, **std::get_if<Outline*>(&slot), node, place, shown, path,
                             context);
    case ValueKind::Point: {
      const auto point = readPoint(node, shown, context);
      if (point) **std::get_if<Vec2*>(&slot) = *point;
      return point.has_value();
    }
    case ValueKind::Text:
    case ValueKind::Choice:
    case ValueKind::StoreyRef:
      break;
  }
  const auto text = node.value<std::string>();
  if (!text) {
    context.error(place, shown + " is " + typeWords(node), neededWords(key));
    return false;
  }
  if (key.kind == ValueKind::Choice) {
    return readChoiceInto(key, slot, *text, place, shown, context);
  }
  return readTextInto(slot, *text, place, shown, context);
}

}  // namespace model
