// Numbers in the cells of a table that people typed: a decimal point or a decimal comma, but the
// same all through one file.
#pragma once

#include <optional>
#include <string>

#include "model/job/csv_rows.h"

namespace model {

// How messages say what a number should be.
struct DecimalWords {
  const char* unit = "metres";
  const char* example = "1.435";
};

// "1,435" as 1.435 where the mark is a point, and the other way round; a text with another number
// of marks is left as it is.
std::string withDecimalMark(std::string number, char mark);

class Decimals {
 public:
  Decimals(const std::string& file, Problems& problems) : file_(file), problems_(problems) {}

  // Nothing for an empty cell or a dash. Not finite, and a problem, for one that is no number.
  std::optional<double> read(const CsvCell& cell, const DecimalWords& words = {});

 private:
  double fault(const CsvCell& cell, const std::string& what, const std::string& instead);

  const std::string& file_;
  Problems& problems_;
  char mark_ = 0;  // the first decimal mark met
  int markLine_ = 0;
};

}  // namespace model
