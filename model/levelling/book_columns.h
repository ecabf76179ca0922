// The columns of a level book's file, and which cell of a row is whose.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "model/job/csv_rows.h"

namespace model {

enum class BookColumn {
  Point,
  Backsight,
  Intermediate,
  Foresight,
  Distance,
  Known,
  Booked,
  Remark,
  WorkedOut,  // such as rise and fall: worked out again, so not read
};

struct BookColumns {
  std::map<BookColumn, size_t> at;  // index of the cell; WorkedOut is left out
  size_t count = 0;
  bool usable = false;  // false: the rows cannot be told
};

// From the first row. Headings in any capitals, with or without their unit.
BookColumns readBookColumns(const CsvRow& heading, const std::string& file, Problems& problems);

// The column of a heading, in any capitals, with or without its unit; nothing for a heading that no
// level book has.
std::optional<BookColumn> bookColumnNamed(const std::string& heading);

// The heading that writeBook gives a column.
std::string columnName(BookColumn column);

}  // namespace model
