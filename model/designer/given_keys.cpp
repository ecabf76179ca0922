#include "model/designer/given_keys.h"

#include <algorithm>
#include <string_view>
#include <variant>

#include "model/asbuilt/words.h"
#include "model/decimal_text.h"
#include "model/level_text.h"

namespace model {

namespace {

// The key that brings a size with it; null for one that stands alone.
const char* bringerOf(const KeyRef& key) {
  if (std::string_view(key.table) != "walls") return nullptr;
  const std::string_view name = key.name;
  for (const char* each : {"outer_leaf", "brick_length", "brick_height", "joint"})
    if (name == each) return "bricks";
  for (const char* each : {"inner_leaf", "block_length", "block_height"})
    if (name == each) return "blocks";
  return nullptr;
}

std::string numberText(ValueKind kind, double value) {
  switch (kind) {
    case ValueKind::Length:
      return millimetres(value);
    case ValueKind::Level:
      return levelText(value);
    case ValueKind::Degrees:
    case ValueKind::Pitch: {
      const std::string text = decimalText(value, 1);
      return (text.ends_with(".0") ? text.substr(0, text.size() - 2) : text) + "\u00b0";
    }
    default:
      return decimalText(value, 2);
  }
}

}  // namespace

GivenKeys::GivenKeys(const Job& job, const KeyPlaces& places) : job_(job), places_(places) {}

std::string GivenKeys::pathOf(const KeyRef& key) {
  const TableSpec* table = findTable(key.table);
  const bool many = table && table->form == TableForm::Many;
  return std::string(key.table) + (many ? "[" + std::to_string(key.index) + "]" : "") + "." +
         key.name;
}

bool GivenKeys::has(const KeyRef& key) const {
  const TableSpec* table = findTable(key.table);
  if (!table || !findKey(key.table, key.name)) return false;
  return table->form == TableForm::Always || key.index < table->count(job_);
}

bool GivenKeys::isDefault(const KeyRef& key) const {
  Job plain;
  const TableSpec* table = findTable(key.table);
  if (table->form != TableForm::Always && table->count(plain) <= key.index)
    table->resize(plain, key.index + 1);
  const KeySpec* spec = findKey(key.table, key.name);
  return sameValue(spec->slot(plain, key.index), spec->slot(job_, key.index));
}

bool GivenKeys::given(const KeyRef& key) const {
  if (!has(key)) return false;
  const KeySpec* spec = findKey(key.table, key.name);
  if (spec->required) return true;
  if (isUnset(spec->slot(job_, key.index))) return false;
  if (places_.empty()) return !isDefault(key);
  const char* bringer = bringerOf(key);
  return inFile(pathOf(key)) || (bringer && inFile(std::string("walls.") + bringer));
}

std::string GivenKeys::line(const KeyRef& key) const {
  auto place = places_.find(pathOf(key));
  if (place == places_.end() && bringerOf(key))
    place = places_.find(std::string("walls.") + bringerOf(key));
  if (place == places_.end() || place->second.line == 0) return {};
  return "line " + std::to_string(place->second.line);
}

std::string GivenKeys::value(const KeyRef& key) const {
  if (!has(key)) return {};
  const KeySpec* spec = findKey(key.table, key.name);
  const Slot slot = spec->slot(job_, key.index);
  if (const auto* number = std::get_if<double*>(&slot)) return numberText(spec->kind, **number);
  if (const auto* number = std::get_if<std::optional<double>*>(&slot))
    return **number ? numberText(spec->kind, ***number) : std::string();
  if (const auto* text = std::get_if<std::string*>(&slot)) return **text;
  if (spec->kind == ValueKind::Choice) {
    const std::vector<std::string> choices = choicesOf(*spec);
    const int choice = choiceIn(slot);
    if (choice >= 0 && size_t(choice) < choices.size()) return choices[size_t(choice)];
  }
  return {};
}

std::string GivenKeys::whenAbsent(const KeyRef& key) const {
  // Brought by what stands in for the bricks or blocks themselves.
  if (const char* bringer = bringerOf(key))
    return "of the " + value({"walls", bringer}) + " " +
           std::string(bringer).substr(0, std::string_view(bringer).size() - 1);
  const KeySpec* spec = findKey(key.table, key.name);
  std::string words = spec && spec->whenAbsent ? spec->whenAbsent : "";
  std::erase(words, '`');
  return words;
}

}  // namespace model
