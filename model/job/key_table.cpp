#include "model/job/key_table.h"

#include <map>

#include "model/job/key_sections.h"

namespace model {

const std::vector<KeySpec>& keyTable() {
  static const std::vector<KeySpec> table = [] {
    std::vector<KeySpec> all;
    for (const auto& section : {jobKeys(),       siteKeys(),           surveyKeys(),
                                groundKeys(),    outlineKeys(),        storeyKeys(),
                                wallKeys(),      builtInKeys(),        foundationKeys(),
                                cellarKeys(),    floorKeys(),          openingKeys(),
                                stairKeys(),     movementJointKeys(),  cavityBarrierKeys(),
                                airBrickKeys(),  dampCourseStepKeys(), corbelKeys(),
                                junctionKeys(),  gardenWallKeys(),     roofKeys(),
                                layingKeys(),    programmeKeys(),      stageKeys(),
                                stageViewKeys(), settingOutKeys(),     setUpKeys(),
                                readingKeys()}) {
      all.insert(all.end(), section.begin(), section.end());
    }
    return all;
  }();
  return table;
}

const KeySpec* findKey(std::string_view table, std::string_view name) {
  using Path = std::pair<std::string_view, std::string_view>;
  static const auto index = [] {
    std::map<Path, const KeySpec*> keys;
    for (const KeySpec& key : keyTable()) keys.emplace(Path(key.table, key.name), &key);
    return keys;
  }();
  const auto found = index.find({table, name});
  return found == index.end() ? nullptr : found->second;
}

const TableSpec* findTable(std::string_view path) {
  static const auto index = [] {
    std::map<std::string_view, const TableSpec*> tables;
    for (const TableSpec& table : tableTable()) tables.emplace(table.path, &table);
    return tables;
  }();
  const auto found = index.find(path);
  return found == index.end() ? nullptr : found->second;
}

std::vector<std::string> choicesOf(const KeySpec& key) {
  std::vector<std::string> words;
  std::string_view rest = key.choices ? key.choices : "";
  while (!rest.empty()) {
    const size_t bar = rest.find('|');
    words.emplace_back(rest.substr(0, bar));
    rest = bar == std::string_view::npos ? std::string_view{} : rest.substr(bar + 1);
  }
  return words;
}

int choiceIn(const Slot& slot) {
  return std::visit(
      [](auto* value) -> int {
        using Value = std::remove_pointer_t<decltype(value)>;
        if constexpr (std::is_enum_v<Value>) return static_cast<int>(*value);
        return 0;
      },
      slot);
}

void setChoice(const Slot& slot, int choice) {
  std::visit(
      [choice](auto* value) {
        using Value = std::remove_pointer_t<decltype(value)>;
        if constexpr (std::is_enum_v<Value>) *value = static_cast<Value>(choice);
      },
      slot);
}

bool sameValue(const Slot& a, const Slot& b) {
  return std::visit(
      [](auto* left, auto* right) -> bool {
        if constexpr (std::is_same_v<decltype(left), decltype(right)>) return *left == *right;
        return false;
      },
      a, b);
}

bool sameJob(const Job& a, const Job& b) {
  for (const TableSpec& table : tableTable()) {
    if (table.count(a) != table.count(b)) return false;
  }
  for (const KeySpec& key : keyTable()) {
    const size_t count = findTable(key.table)->count(a);
    for (size_t i = 0; i < count; ++i) {
      // Slots are handed out for writing; nothing is written here.
      if (!sameValue(key.slot(const_cast<Job&>(a), i), key.slot(const_cast<Job&>(b), i))) {
        return false;
      }
    }
  }
  return true;
}

bool isUnset(const Slot& slot) {
  if (const auto* number = std::get_if<std::optional<double>*>(&slot)) return !**number;
  if (const auto* text = std::get_if<std::optional<std::string>*>(&slot)) return !**text;
  return false;
}

}  // namespace model
