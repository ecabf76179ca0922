#include "model/job/key_suggestion.h"

#include "model/job/nearest.h"

namespace model {

std::vector<std::string> keysAndSectionsIn(const std::string& path) {
  std::vector<std::string> names;
  for (const KeySpec& key : keyTable()) {
    if (path == key.table) names.emplace_back(key.name);
  }
  const std::string prefix = path.empty() ? "" : path + ".";
  for (const TableSpec& table : tableTable()) {
    const std::string_view whole = table.path;
    if (whole.substr(0, prefix.size()) != prefix) continue;
    const std::string_view last = whole.substr(prefix.size());
    if (last.find('.') == std::string_view::npos) names.emplace_back(last);
  }
  return names;
}

std::string headingOf(const TableSpec& table) {
  return table.form == TableForm::Many ? "[[" + std::string(table.path) + "]]"
                                       : "[" + std::string(table.path) + "]";
}

namespace {

// Where a key of this name does belong; empty when nowhere or in too many places to say.
std::string homeOf(const std::string& name) {
  const TableSpec* home = nullptr;
  for (const KeySpec& key : keyTable()) {
    if (name != key.name) continue;
    if (home) return {};
    home = findTable(key.table);
  }
  return home ? headingOf(*home) : std::string{};
}

}  // namespace

std::string keySuggestion(const std::string& path, const std::string& name) {
  if (path.empty() || !nearest(name, keysAndSectionsIn(path))) {
    const std::string home = homeOf(name);
    if (!home.empty()) return name + " belongs in " + home;
  }
  const auto near = nearest(name, keysAndSectionsIn(path));
  if (near) {
    const TableSpec* table = findTable(path.empty() ? *near : path + "." + *near);
    return "did you mean " + (table ? headingOf(*table) : *near) + "?";
  }
  for (const TableSpec& table : tableTable()) {
    const std::string_view whole = table.path;
    const size_t dot = whole.rfind('.');
    if (dot != std::string_view::npos && whole.substr(dot + 1) == name) {
      return "did you mean " + headingOf(table) + "?";
    }
  }
  std::string words;
  for (const std::string& known : keysAndSectionsIn(path))
    words += (words.empty() ? "" : ", ") + known;
  return (path.empty() ? "the sections are " : "[" + path + "] takes ") + words;
}

}  // namespace model
