#include "viewer/commands/stages_asked.h"

#include <charconv>
#include <cstdio>
#include <set>
#include <sstream>
#include <string_view>

#include "viewer/commands/picture_options.h"

namespace viewer {
namespace {

// A stage's number, from 1.
std::optional<size_t> number(std::string_view text) {
  size_t value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
  return value;
}

// "8-12"; ids have hyphens too, but letters with them.
struct NumberRange {
  size_t from = 0, to = 0;
};
std::optional<NumberRange> range(std::string_view text) {
  const size_t hyphen = text.find('-');
  if (hyphen == std::string_view::npos) return std::nullopt;
  const auto from = number(text.substr(0, hyphen)), to = number(text.substr(hyphen + 1));
  if (!from || !to) return std::nullopt;
  return NumberRange{*from, *to};
}

std::optional<std::string> addOne(const std::string& text, const model::Programme& programme,
                                  std::set<size_t>& found) {
  PictureOptions moment;
  if (auto wrong = readMoment(text, 0, programme, moment)) return wrong;
  found.insert(static_cast<size_t>(moment.time));
  return std::nullopt;
}

std::optional<std::string> addRange(const std::string& text, const NumberRange& asked,
                                    const model::Programme& programme, std::set<size_t>& found) {
  const size_t count = programme.stages.size();
  if (asked.from < 1 || asked.to > count || asked.from > asked.to)
    return "--stage \"" + text + "\": the stages are numbered 1 to " + std::to_string(count) +
           ", and a range goes up";
  for (size_t i = asked.from; i <= asked.to; ++i) found.insert(i - 1);
  return std::nullopt;
}

}  // namespace

std::optional<std::string> readStages(const std::string& text, const model::Programme& programme,
                                      std::vector<size_t>& stages) {
  std::set<size_t> found;
  const size_t count = programme.stages.size();
  if (text.empty() && count > 0) {
    found.insert(count - 1);
  } else if (text == "all") {
    for (size_t i = 0; i < count; ++i) found.insert(i);
  } else if (const auto whole = programme.find(text)) {  // also a name with a comma in it
    found.insert(*whole);
  } else {
    std::istringstream list(text);
    for (std::string item; std::getline(list, item, ',');) {
      const auto asked = range(item);
      auto wrong = asked          ? addRange(item, *asked, programme, found)
                   : item.empty() ? std::optional<std::string>("--stage \"" + text +
                                                               "\": a stage is missing "
                                                               "between two commas")
                                  : addOne(item, programme, found);
      if (wrong) return wrong;
    }
  }
  stages.assign(found.begin(), found.end());
  return std::nullopt;
}

std::string stagePictureName(const model::Programme& programme, size_t stage) {
  char number[24];
  std::snprintf(number, sizeof number, "%02zu", stage + 1);
  return std::string(number) + "-" + programme.stages[stage].id + ".png";
}

}  // namespace viewer
