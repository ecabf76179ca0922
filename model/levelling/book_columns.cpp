#include "model/levelling/book_columns.h"

#include <algorithm>

#include "model/job/nearest.h"

namespace model {
namespace {

struct Heading {
  const char* name;
  BookColumn column;
};

// The first of each column is the one that is written.
constexpr Heading kHeadings[] = {
    {"point", BookColumn::Point},
    {"station", BookColumn::Point},
    {"backsight", BookColumn::Backsight},
    {"back sight", BookColumn::Backsight},
    {"bs", BookColumn::Backsight},
    {"intermediate", BookColumn::Intermediate},
    {"intermediate sight", BookColumn::Intermediate},
    {"is", BookColumn::Intermediate},
    {"foresight", BookColumn::Foresight},
    {"fore sight", BookColumn::Foresight},
    {"fs", BookColumn::Foresight},
    {"distance", BookColumn::Distance},
    {"known", BookColumn::Known},
    {"known level", BookColumn::Known},
    {"level", BookColumn::Booked},
    {"reduced level", BookColumn::Booked},
    {"rl", BookColumn::Booked},
    {"remark", BookColumn::Remark},
    {"remarks", BookColumn::Remark},
    {"rise", BookColumn::WorkedOut},
    {"fall", BookColumn::WorkedOut},
    {"collimation", BookColumn::WorkedOut},
    {"height of collimation", BookColumn::WorkedOut},
    {"correction", BookColumn::WorkedOut},
    {"adjusted", BookColumn::WorkedOut},
    {"adjusted level", BookColumn::WorkedOut},
};

std::string plain(std::string text) {
  for (char& c : text) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    if (c == '\n' || c == '\r') c = ' ';
  }
  for (const std::string unit : {" m", " (m)", " mm", " (mm)"}) {
    if (text.size() > unit.size() && text.substr(text.size() - unit.size()) == unit) {
      return text.substr(0, text.size() - unit.size());
    }
  }
  return text;
}

constexpr const char* kRow = "point,backsight,intermediate,foresight,distance,known,remark";

Problem unknownHeading(const CsvCell& cell, const std::string& file) {
  std::vector<std::string> names;
  for (const Heading& known : kHeadings) names.emplace_back(known.name);
  const auto meant = nearest(plain(cell.text), names);
  return {file, cell.place, Severity::Warning,
          "there is no column \"" + cell.text + "\" in a level book; it is not read",
          meant ? "is it " + *meant + "?" : std::string("the columns are ") + kRow};
}

}  // namespace

std::optional<BookColumn> bookColumnNamed(const std::string& heading) {
  const std::string name = plain(heading);
  for (const Heading& known : kHeadings) {
    if (name == known.name) return known.column;
  }
  return std::nullopt;
}

std::string columnName(BookColumn column) {
  const auto* found = std::find_if(std::begin(kHeadings), std::end(kHeadings),
                                   [&](const Heading& known) { return known.column == column; });
  return found->name;
}

BookColumns readBookColumns(const CsvRow& heading, const std::string& file, Problems& problems) {
  BookColumns columns;
  columns.count = heading.cells.size();
  size_t known = 0;
  for (const CsvCell& cell : heading.cells) known += bookColumnNamed(cell.text).has_value();
  if (known == 0) {
    problems.push_back({file, heading.place, Severity::Error,
                        "the first row does not name the columns",
                        std::string("begin the file with ") + kRow});
    return columns;
  }
  columns.usable = true;
  for (size_t i = 0; i < heading.cells.size(); ++i) {
    const CsvCell& cell = heading.cells[i];
    if (cell.text.empty()) continue;
    const auto column = bookColumnNamed(cell.text);
    if (!column) {
      problems.push_back(unknownHeading(cell, file));
    } else if (*column != BookColumn::WorkedOut && !columns.at.emplace(*column, i).second) {
      problems.push_back({file, cell.place, Severity::Error,
                          "there are two columns of " + columnName(*column) + "s",
                          "keep one of them"});
    }
  }
  for (BookColumn needed : {BookColumn::Point, BookColumn::Backsight, BookColumn::Foresight}) {
    if (columns.at.count(needed)) continue;
    columns.usable = false;
    problems.push_back({file, heading.place, Severity::Error,
                        "there is no column " + columnName(needed),
                        std::string("the columns are ") + kRow});
  }
  return columns;
}

}  // namespace model
