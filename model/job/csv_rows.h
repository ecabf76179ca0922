// Rows and cells of a CSV text, each with its place: RFC 4180, and as spreadsheets save it where
// the decimal mark is a comma (semicolons between cells) or with tabs.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "model/problems.h"

namespace model {

struct CsvCell {
  std::string text;  // without quotes and without spaces around it
  Place place;
};

struct CsvRow {
  Place place;
  std::vector<CsvCell> cells;
};

struct CsvRows {
  std::vector<CsvRow> rows;  // those in which any cell says something
  char separator = ',';      // that of the first row
  bool whole = true;         // false: rows after some fault could not be told apart
};

// `what` is what the file should be, for messages: "a level book". Never throws, whatever the
// bytes; refuses texts over 1 MiB.
CsvRows readCsvRows(std::string_view text, const std::string& file, const std::string& what,
                    Problems& problems);

// A cell as it is written: in quotes when it has to be.
std::string csvCellText(std::string_view text, char separator = ',');

}  // namespace model
