#include "viewer/read_level.h"

#include <charconv>
#include <cmath>
#include <optional>
#include <set>
#include <vector>

#include "model/level_text.h"

namespace viewer {
namespace {

constexpr double kHighest = 1000;  // metres: more is a slip of the keys

std::string plain(const std::string& text) {
  std::string out;
  for (char c : text) out += c >= 'A' && c <= 'Z' ? char(c - 'A' + 'a') : c;
  const size_t from = out.find_first_not_of(' '), to = out.find_last_not_of(' ');
  return from == std::string::npos ? "" : out.substr(from, to - from + 1);
}

std::optional<double> metres(std::string text) {
  if (!text.empty() && text.back() == 'm') text = plain(text.substr(0, text.size() - 1));
  const size_t from = text.empty() || text[0] != '+' ? 0 : 1;
  double value = 0;
  const char* end = text.data() + text.size();
  const auto [at, error] = std::from_chars(text.data() + from, end, value);
  if (error != std::errc() || at != end || (from && text[1] == '-')) return std::nullopt;
  return value;
}

std::vector<std::string> namesOf(const model::ScheduledLevel& level) {
  std::vector<std::string> names{plain(level.key), plain(level.name)};
  if (!level.where.empty()) names.push_back(plain(level.name + ", " + level.where));
  return names;
}

// The heights of those called so; `whole` or only beginning so.
std::set<long> heights(const std::string& called, const model::SettingOut& out, bool whole) {
  std::set<long> found;
  for (const auto& level : out.schedule)
    for (const std::string& name : namesOf(level))
      if (whole ? name == called : name.rfind(called, 0) == 0)
        found.insert(std::lround(level.level * 10000));
  return found;
}

std::string listed(const model::SettingOut& out, const std::string& beginning) {
  std::string text;
  for (const auto& level : out.schedule) {
    bool begins = beginning.empty();
    for (const std::string& name : namesOf(level)) begins |= name.rfind(beginning, 0) == 0;
    if (!begins) continue;
    text += "\n  " + model::levelText(level.level) + "  " + level.name;
    if (!level.where.empty()) text += ", " + level.where;
  }
  return text;
}

}  // namespace

std::variant<double, NoLevel> readLevel(const std::string& text,
                                        const model::SettingOut& settingOut) {
  const std::string called = plain(text);
  if (const auto level = metres(called)) {
    if (std::isfinite(*level) && std::abs(*level) <= kHighest) return *level;
    return NoLevel{"\"" + text + "\" is out of reach; levels go to 1000 m up or down"};
  }
  // A key means one level alone, even where others have it for their name.
  for (const auto& level : settingOut.schedule)
    if (plain(level.key) == called) return level.level;
  for (const bool whole : {true, false}) {
    if (called.empty()) break;
    const auto found = heights(called, settingOut, whole);
    if (found.size() == 1) return double(*found.begin()) / 10000;
    if (found.size() > 1)
      return NoLevel{"there are several levels \"" + text +
                     "\"; say which:" + listed(settingOut, called)};
  }
  return NoLevel{"\"" + text +
                 "\" is no level; write metres such as 1.350, or one of the schedule:" +
                 listed(settingOut, "")};
}

}  // namespace viewer
