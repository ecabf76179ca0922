#include "model/job/reading_row.h"

#include <array>
#include <cmath>

#include "model/job/lengths.h"
#include "model/job/nearest.h"

namespace model {

namespace {

constexpr size_t kLongestText = 200;  // characters, as in the job file

bool isMetres(ReadingKind kind) { return kind == ReadingKind::Level || kind == ReadingKind::Staff; }

bool isDigits(const std::string& text, size_t least, size_t most) {
  return text.size() >= least && text.size() <= most &&
         text.find_first_not_of("0123456789") == std::string::npos;
}

class RowReader {
 public:
  RowReader(const ReadingRow& row, const std::string& file, Decimals& decimals, Problems& problems)
      : row_(row), file_(file), decimals_(decimals), problems_(problems) {}

  std::optional<Reading> read(char separator) {
    if (hasTooManyCells() || (separator == ',' && hasDecimalComma())) return std::nullopt;
    const auto kind = readKind();
    if (!kind || !hasPlainTexts()) return std::nullopt;
    Reading reading;
    reading.kind = *kind;
    reading.place = row_.row.place;
    reading.target = row_.text(ReadingColumn::Target);
    reading.at = row_.text(ReadingColumn::At);
    reading.setUp = row_.text(ReadingColumn::SetUp);
    reading.note = row_.text(ReadingColumn::Note);
    reading.photo = row_.text(ReadingColumn::Photo);
    if (!readNumbers(reading)) return std::nullopt;
    return reading;
  }

 private:
  void error(ReadingColumn column, std::string what, std::string instead) {
    problems_.push_back(
        {file_, row_.place(column), Severity::Error, std::move(what), std::move(instead)});
  }

  bool hasTooManyCells() {
    const auto& cells = row_.row.cells;
    for (size_t i = row_.columns.count; i < cells.size(); ++i) {
      if (cells[i].text.empty()) continue;
      problems_.push_back({file_, cells[i].place, Severity::Error,
                           "this row has more cells than there are columns",
                           "put a text that has commas or semicolons in quotes, and decimals with "
                           "a point"});
      return true;
    }
    return false;
  }

  // 1,435 without quotes in a file with commas is two cells, the second of three digits: an x
  // without its y.
  bool hasDecimalComma() {
    const CsvCell* value = row_.cell(ReadingColumn::Value);
    const CsvCell* x = row_.cell(ReadingColumn::X);
    if (!value || x != value + 1 || !row_.text(ReadingColumn::Y).empty() ||
        !isDigits(x->text, 3, 3))
      return false;
    const size_t sign = value->text.find_first_not_of("+-");
    if (sign == std::string::npos || !isDigits(value->text.substr(sign), 1, 2)) return false;
    error(ReadingColumn::Value,
          value->text + "," + x->text +
              " has a decimal comma, and commas stand between the cells too",
          "write " + value->text + "." + x->text +
              ", or save the file with semicolons between the cells");
    return true;
  }

  std::optional<ReadingKind> readKind() {
    const std::string word = row_.text(ReadingColumn::Kind);
    if (const auto kind = readingKindNamed(word)) return kind;
    const auto near = nearest(word, readingKindWords());
    error(ReadingColumn::Kind,
          word.empty() ? "this row has no kind" : "there is no kind \"" + word.substr(0, 60) + "\"",
          near ? "did you mean \"" + *near + "\"?"
               : "it is level, staff, face, corner, side or diagonal");
    return std::nullopt;
  }

  bool hasPlainTexts() {
    for (const ReadingColumn column :
         {ReadingColumn::Target, ReadingColumn::At, ReadingColumn::SetUp, ReadingColumn::Note,
          ReadingColumn::Photo}) {
      size_t characters = 0;
      bool control = false;
      for (const char c : row_.text(column)) {
        characters += (static_cast<unsigned char>(c) & 0xC0) != 0x80;
        control = control || static_cast<unsigned char>(c) < 0x20 || c == 0x7F;
      }
      const std::string who = std::string("this ") + headingOf(column);
      if (control) {
        error(column, who + " has a line break or another control character in it",
              "write it on one line");
      } else if (characters > kLongestText) {
        error(column, who + " is too long", "at most 200 characters are read");
      } else {
        continue;
      }
      return false;
    }
    return true;
  }

  std::optional<double> number(ReadingColumn column, const DecimalWords& words, bool& good) {
    const CsvCell* cell = row_.cell(column);
    if (!cell) return std::nullopt;
    const auto value = decimals_.read(*cell, words);
    good = good && (!value || std::isfinite(*value));
    return value;
  }

  bool readNumbers(Reading& reading) {
    constexpr DecimalWords kMetres{}, kMillimetres{"millimetres", "2400"};
    bool good = true;
    reading.along = number(ReadingColumn::Along, kMillimetres, good);
    const auto x = number(ReadingColumn::X, kMillimetres, good);
    const auto y = number(ReadingColumn::Y, kMillimetres, good);
    const auto value =
        number(ReadingColumn::Value, isMetres(reading.kind) ? kMetres : kMillimetres, good);
    if (!good) return false;
    if (x.has_value() != y.has_value()) {
      error(x ? ReadingColumn::X : ReadingColumn::Y, std::string(x ? "x" : "y") + " stands alone",
            "a position needs both x and y, in mm");
      return false;
    }
    if (x) reading.position = Vec2{*x, *y};
    const bool corner = reading.kind == ReadingKind::Corner;
    if (corner && value) {
      error(ReadingColumn::Value, "a corner has no value", "give its position as x and y, in mm");
      return false;
    }
    if (!corner && !value) {
      error(ReadingColumn::Value, "this row has no value",
            isMetres(reading.kind) ? "write metres, such as 1.435"
                                   : "write millimetres, such as 2400");
      return false;
    }
    reading.value = value.value_or(0);
    return true;
  }

  const ReadingRow& row_;
  const std::string& file_;
  Decimals& decimals_;
  Problems& problems_;
};

}  // namespace

const CsvCell* ReadingRow::cell(ReadingColumn column) const {
  const auto found = columns.at.find(column);
  if (found == columns.at.end() || found->second >= row.cells.size()) return nullptr;
  return &row.cells[found->second];
}

std::string ReadingRow::text(ReadingColumn column) const {
  const CsvCell* found = cell(column);
  return found ? found->text : std::string{};
}

Place ReadingRow::place(ReadingColumn column) const {
  const CsvCell* found = cell(column);
  return found ? found->place : row.place;
}

std::optional<Reading> readReadingRow(const ReadingRow& row, char separator,
                                      const std::string& file, Decimals& decimals,
                                      Problems& problems) {
  return RowReader(row, file, decimals, problems).read(separator);
}

}  // namespace model
