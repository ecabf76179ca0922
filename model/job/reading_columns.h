// The columns and the kinds of reading in a file of readings, by their names.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "model/job/csv_rows.h"
#include "model/job/site_work.h"

namespace model {

enum class ReadingColumn { Kind, Target, At, Along, Value, X, Y, SetUp, Note, Photo };

struct ReadingColumns {
  std::map<ReadingColumn, size_t> at;  // index of the cell
  size_t count = 0;
  bool usable = false;  // false: the rows cannot be told
};

// From the first row. Headings in any capitals, lengths with or without their mm.
ReadingColumns readReadingColumns(const CsvRow& heading, const std::string& file,
                                  Problems& problems);

// The heading that writeReadings gives a column.
const char* headingOf(ReadingColumn column);

// "level", "staff", "face", "corner", "side", "diagonal", in any capitals.
std::optional<ReadingKind> readingKindNamed(std::string word);
const char* wordOf(ReadingKind kind);
std::vector<std::string> readingKindWords();

}  // namespace model
