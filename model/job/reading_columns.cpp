#include "model/job/reading_columns.h"

#include <algorithm>

#include "model/job/nearest.h"

namespace model {

namespace {

struct Heading {
  const char* name;
  ReadingColumn column;
};

// The first of each column is the one that is written.
constexpr Heading kHeadings[] = {
    {"kind", ReadingColumn::Kind},     {"target", ReadingColumn::Target},
    {"at", ReadingColumn::At},         {"along mm", ReadingColumn::Along},
    {"along", ReadingColumn::Along},   {"value", ReadingColumn::Value},
    {"reading", ReadingColumn::Value}, {"x mm", ReadingColumn::X},
    {"x", ReadingColumn::X},           {"y mm", ReadingColumn::Y},
    {"y", ReadingColumn::Y},           {"set-up", ReadingColumn::SetUp},
    {"set up", ReadingColumn::SetUp},  {"setup", ReadingColumn::SetUp},
    {"note", ReadingColumn::Note},     {"remark", ReadingColumn::Note},
    {"photo", ReadingColumn::Photo},
};

constexpr const char* kRow = "kind,target,at,along mm,value,x mm,y mm,set-up,note,photo";

std::string small(std::string text) {
  for (char& c : text) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    if (c == '_' || c == '\n' || c == '\r') c = ' ';
  }
  return text;
}

std::string plain(const std::string& heading) {
  const std::string text = small(heading);
  const std::string bracketed = " (mm)";
  if (text.size() > bracketed.size() && text.ends_with(bracketed))
    return text.substr(0, text.size() - bracketed.size());
  return text;
}

std::optional<ReadingColumn> columnOf(const std::string& heading) {
  for (const Heading& known : kHeadings) {
    if (heading == known.name) return known.column;
  }
  return std::nullopt;
}

Problem unknownHeading(const CsvCell& cell, const std::string& file) {
  std::vector<std::string> names;
  for (const Heading& known : kHeadings) names.emplace_back(known.name);
  const auto meant = nearest(plain(cell.text), names);
  return {file, cell.place, Severity::Warning,
          "there is no column \"" + cell.text.substr(0, 60) + "\" of readings; it is not read",
          meant ? "is it " + *meant + "?" : std::string("the columns are ") + kRow};
}

constexpr const char* kKinds[] = {"level", "staff", "face", "corner", "side", "diagonal"};

}  // namespace

ReadingColumns readReadingColumns(const CsvRow& heading, const std::string& file,
                                  Problems& problems) {
  ReadingColumns columns;
  columns.count = heading.cells.size();
  const bool any = std::any_of(heading.cells.begin(), heading.cells.end(), [](const CsvCell& cell) {
    return columnOf(plain(cell.text)).has_value();
  });
  if (!any) {
    problems.push_back({file, heading.place, Severity::Error,
                        "the first row does not name the columns",
                        std::string("begin the file with ") + kRow});
    return columns;
  }
  columns.usable = true;
  for (size_t i = 0; i < heading.cells.size(); ++i) {
    const CsvCell& cell = heading.cells[i];
    if (cell.text.empty()) continue;
    const auto column = columnOf(plain(cell.text));
    if (!column) {
      problems.push_back(unknownHeading(cell, file));
    } else if (!columns.at.emplace(*column, i).second) {
      problems.push_back({file, cell.place, Severity::Error,
                          std::string("there are two columns ") + headingOf(*column),
                          "keep one of them"});
    }
  }
  for (const ReadingColumn needed :
       {ReadingColumn::Kind, ReadingColumn::Target, ReadingColumn::At}) {
    if (columns.at.count(needed)) continue;
    columns.usable = false;
    problems.push_back({file, heading.place, Severity::Error,
                        std::string("there is no column ") + headingOf(needed),
                        std::string("the columns are ") + kRow});
  }
  if (!columns.at.count(ReadingColumn::Value) && !columns.at.count(ReadingColumn::X)) {
    columns.usable = false;
    problems.push_back({file, heading.place, Severity::Error, "there is no column value",
                        std::string("the columns are ") + kRow});
  }
  return columns;
}

const char* headingOf(ReadingColumn column) {
  return std::find_if(std::begin(kHeadings), std::end(kHeadings),
                      [&](const Heading& known) { return known.column == column; })
      ->name;
}

std::optional<ReadingKind> readingKindNamed(std::string word) {
  word = small(std::move(word));
  for (size_t i = 0; i < std::size(kKinds); ++i) {
    if (word == kKinds[i]) return static_cast<ReadingKind>(i);
  }
  return std::nullopt;
}

const char* wordOf(ReadingKind kind) { return kKinds[static_cast<size_t>(kind)]; }

std::vector<std::string> readingKindWords() { return {std::begin(kKinds), std::end(kKinds)}; }

}  // namespace model
