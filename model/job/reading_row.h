// One row of a file of readings: its cells as they stand, and what they say.
#pragma once

#include <map>
#include <optional>
#include <string>

#include "model/job/csv_rows.h"
#include "model/job/decimals.h"
#include "model/job/reading_columns.h"

namespace model {

// A row with its cells found by their columns.
struct ReadingRow {
  const CsvRow& row;
  const ReadingColumns& columns;

  const CsvCell* cell(ReadingColumn column) const;
  // Empty where there is no such cell.
  std::string text(ReadingColumn column) const;
  // Of the cell, or of the row where there is none.
  Place place(ReadingColumn column) const;
};

// The row's cells as a Reading, nothing yet held against the job; nothing, with the problem added,
// when they cannot be told apart, its kind is not known or a number is none. Along and x, y are in
// the file's millimetres; so is the value, but for levels and staff readings.
std::optional<Reading> readReadingRow(const ReadingRow& row, char separator,
                                      const std::string& file, Decimals& decimals,
                                      Problems& problems);

}  // namespace model
