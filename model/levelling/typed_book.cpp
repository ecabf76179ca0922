#include "model/levelling/typed_book.h"

#include <algorithm>

#include "model/job/csv_rows.h"
#include "model/job/decimals.h"
#include "model/job/lengths.h"

namespace model {
namespace {

size_t indexOf(BookColumn column) {
  const auto* found = std::find(kTypedColumns.begin(), kTypedColumns.end(), column);
  return static_cast<size_t>(found - kTypedColumns.begin());
}

bool isUsed(const TypedBook& book, BookColumn column) {
  if (column <= BookColumn::Foresight) return true;
  return std::any_of(book.rows.begin(), book.rows.end(),
                     [&](const TypedBooking& row) { return !row[column].empty(); });
}

// The first decimal mark of the book's numbers.
char markOf(const TypedBook& book) {
  for (const TypedBooking& row : book.rows) {
    for (const BookColumn column : kTypedColumns) {
      if (column == BookColumn::Point || column == BookColumn::Remark) continue;
      if (const size_t at = row[column].find_first_of(".,"); at != std::string::npos)
        return row[column][at];
    }
  }
  return book.separator == ';' ? ',' : '.';
}

// Where the cells of a file's row go.
struct Destinations {
  BookColumns columns;
  std::vector<size_t> others;  // cells of columns that are not a level book's
};

Destinations destinationsOf(const CsvRow& heading, const std::string& file, TypedBook& book,
                            Problems& problems) {
  Destinations to{readBookColumns(heading, file, problems), {}};
  for (size_t i = 0; i < heading.cells.size(); ++i) {
    const std::string& name = heading.cells[i].text;
    if (name.empty() || bookColumnNamed(name)) continue;
    to.others.push_back(i);
    book.otherColumns.push_back(name);
  }
  return to;
}

// False, with the problem, for a row with a cell that has no column.
bool hasColumnsForAll(const CsvRow& row, const Destinations& to, const std::string& file,
                      Problems& problems) {
  for (size_t i = to.columns.count; i < row.cells.size(); ++i) {
    if (row.cells[i].text.empty()) continue;
    problems.push_back({file, row.cells[i].place, Severity::Error,
                        "this row has more cells than there are columns",
                        "put a text that has commas or semicolons in quotes"});
    return false;
  }
  return true;
}

TypedBooking typedRow(const CsvRow& row, const Destinations& to) {
  TypedBooking typed;
  const auto cell = [&](size_t i) { return i < row.cells.size() ? row.cells[i].text : ""; };
  for (const auto& [column, index] : to.columns.at) typed[column] = cell(index);
  for (const size_t index : to.others) typed.others.push_back(cell(index));
  return typed;
}

}  // namespace

std::string& TypedBooking::operator[](BookColumn column) { return cells.at(indexOf(column)); }

const std::string& TypedBooking::operator[](BookColumn column) const {
  return cells.at(indexOf(column));
}

bool TypedBooking::empty() const {
  const auto none = [](const std::string& text) { return text.empty(); };
  return std::all_of(cells.begin(), cells.end(), none) &&
         std::all_of(others.begin(), others.end(), none);
}

std::optional<TypedBook> readTypedBook(std::string_view text, const std::string& file,
                                       Problems& problems) {
  const CsvRows csv = readCsvRows(text, file, "a level book", problems);
  if (csv.rows.empty() && !hasErrors(problems)) {
    problems.push_back({file,
                        {},
                        Severity::Error,
                        "there is nothing in this file",
                        "begin with point,backsight,intermediate,foresight"});
  }
  if (csv.rows.empty() || hasErrors(problems)) return std::nullopt;
  TypedBook book;
  book.separator = csv.separator;
  const Destinations to = destinationsOf(csv.rows.front(), file, book, problems);
  if (!to.columns.usable || hasErrors(problems)) return std::nullopt;
  for (size_t i = 1; i < csv.rows.size(); ++i) {
    if (!hasColumnsForAll(csv.rows[i], to, file, problems)) return std::nullopt;
    book.rows.push_back(typedRow(csv.rows[i], to));
  }
  return book;
}

std::string typedBookText(const TypedBook& book) {
  std::string text;
  const std::string between(1, book.separator);
  std::vector<BookColumn> columns;
  std::copy_if(kTypedColumns.begin(), kTypedColumns.end(), std::back_inserter(columns),
               [&](BookColumn column) { return isUsed(book, column); });
  const auto write = [&](const auto& cell, const std::vector<std::string>& others) {
    for (const BookColumn column : columns)
      text +=
          (column == columns.front() ? "" : between) + csvCellText(cell(column), book.separator);
    for (size_t i = 0; i < book.otherColumns.size(); ++i)
      text += between + (i < others.size() ? csvCellText(others[i], book.separator) : "");
    text += "\r\n";
  };
  write(columnName, book.otherColumns);
  for (const TypedBooking& row : book.rows) {
    if (!row.empty()) write([&](BookColumn column) { return row[column]; }, row.others);
  }
  return text;
}

void fillKnownLevels(TypedBook& book, const BookSettings& settings) {
  const char decimal = markOf(book);
  for (TypedBooking& row : book.rows) {
    if (!row[BookColumn::Known].empty()) continue;
    for (const Mark& mark : settings.marks) {
      if (sameName(mark.name, row[BookColumn::Point]))
        row[BookColumn::Known] = withDecimalMark(levelValueText(mark.level), decimal);
    }
  }
}

}  // namespace model
