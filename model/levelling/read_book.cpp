#include "model/levelling/read_book.h"

#include <algorithm>

#include "model/job/decimals.h"
#include "model/job/text_file.h"
#include "model/levelling/book_columns.h"
#include "model/levelling/check_book.h"

namespace model {
namespace {

constexpr size_t kMostBookings = 2000;

bool isDigits(const std::string& text, size_t least, size_t most) {
  const size_t sign = !text.empty() && (text[0] == '-' || text[0] == '+') ? 1 : 0;
  const size_t digits = text.size() - sign;
  return digits >= least && digits <= most &&
         text.find_first_not_of("0123456789", sign) == std::string::npos;
}

// Rows of one file to bookings.
class BookingReader {
 public:
  BookingReader(const CsvRows& csv, const BookColumns& columns, const std::string& file,
                Problems& problems)
      : csv_(csv), columns_(columns), file_(file), problems_(problems), decimals_(file, problems) {}

  // Nothing when the row's cells cannot be told apart.
  std::optional<Booking> read(const CsvRow& row) {
    if (hasDecimalComma(row) || hasTooManyCells(row)) return std::nullopt;
    Booking booking;
    if (const CsvCell* cell = cellOf(row, BookColumn::Point)) booking.point = cell->text;
    if (const CsvCell* cell = cellOf(row, BookColumn::Remark)) booking.remark = cell->text;
    booking.places.point = placeOf(row, BookColumn::Point);
    number(row, BookColumn::Backsight, booking.backsight, booking.places.backsight);
    number(row, BookColumn::Intermediate, booking.intermediate, booking.places.intermediate);
    number(row, BookColumn::Foresight, booking.foresight, booking.places.foresight);
    number(row, BookColumn::Distance, booking.distance, booking.places.distance);
    number(row, BookColumn::Known, booking.known, booking.places.known);
    number(row, BookColumn::Booked, booking.booked, booking.places.booked);
    return booking;
  }

 private:
  const CsvCell* cellOf(const CsvRow& row, BookColumn column) const {
    const auto found = columns_.at.find(column);
    if (found == columns_.at.end() || found->second >= row.cells.size()) return nullptr;
    return &row.cells[found->second];
  }

  Place placeOf(const CsvRow& row, BookColumn column) const {
    const CsvCell* cell = cellOf(row, column);
    return cell ? cell->place : row.place;
  }

  void number(const CsvRow& row, BookColumn column, std::optional<double>& into, Place& place) {
    place = placeOf(row, column);
    if (const CsvCell* cell = cellOf(row, column)) into = decimals_.read(*cell);
  }

  // 1,435 without quotes in a file with commas is two cells, the second of three digits.
  bool hasDecimalComma(const CsvRow& row) {
    if (csv_.separator != ',') return false;
    for (const auto& [column, at] : columns_.at) {
      if (column == BookColumn::Point || column == BookColumn::Remark) continue;
      if (at + 1 >= row.cells.size()) continue;
      const CsvCell &whole = row.cells[at], &part = row.cells[at + 1];
      if (!isDigits(whole.text, 1, 2) || !isDigits(part.text, 3, 3) || part.text[0] == '-')
        continue;
      problems_.push_back({file_, whole.place, Severity::Error,
                           whole.text + "," + part.text +
                               " has a decimal comma, and commas stand between the cells too",
                           "write " + whole.text + "." + part.text +
                               ", or save the file with semicolons between the cells"});
      return true;
    }
    return false;
  }

  bool hasTooManyCells(const CsvRow& row) {
    for (size_t i = columns_.count; i < row.cells.size(); ++i) {
      if (row.cells[i].text.empty()) continue;
      problems_.push_back({file_, row.cells[i].place, Severity::Error,
                           "this row has " + std::to_string(row.cells.size()) + " cells for " +
                               std::to_string(columns_.count) + " columns",
                           "put a text that has commas or semicolons in quotes"});
      return true;
    }
    return false;
  }

  const CsvRows& csv_;
  const BookColumns& columns_;
  const std::string& file_;
  Problems& problems_;
  Decimals decimals_;
};

Problem refusal(const std::string& file, const std::string& what, const std::string& instead) {
  return {file, {}, Severity::Error, what, instead};
}

void readRows(const CsvRows& csv, const std::string& file, const BookSettings& settings,
              ReadBookResult& result) {
  const BookColumns columns = readBookColumns(csv.rows.front(), file, result.problems);
  if (!columns.usable) return;
  BookingReader reader(csv, columns, file, result.problems);
  LevelBook book;
  bool whole = csv.whole;
  for (size_t i = 1; i < csv.rows.size(); ++i) {
    auto booking = reader.read(csv.rows[i]);
    whole = whole && booking.has_value();
    if (booking) book.bookings.push_back(std::move(*booking));
  }
  joinChangePoints(book);
  // The order of sights means nothing where rows are lost.
  if (whole) {
    const Problems meaning = checkBook(book, file, settings);
    const bool broken = hasErrors(result.problems);
    for (const Problem& problem : meaning) {
      if (!broken || problem.severity == Severity::Error) result.problems.push_back(problem);
    }
  }
  if (whole && !hasErrors(result.problems)) result.book = std::move(book);
}

}  // namespace

ReadBookResult readBook(std::string_view text, const std::string& file,
                        const BookSettings& settings) {
  ReadBookResult result;
  const CsvRows csv = readCsvRows(text, file, "a level book", result.problems);
  if (csv.rows.size() > kMostBookings + 1) {
    result.problems = {refusal(file, "the book has over 2,000 rows",
                               "a level book is a few pages; is this the right file?")};
  } else if (!csv.rows.empty()) {
    readRows(csv, file, settings, result);
  } else if (!hasErrors(result.problems)) {
    result.problems.push_back(
        refusal(file, "there is nothing in this file",
                "begin with point,backsight,intermediate,foresight,distance,known,remark"));
  }
  sortByPlace(result.problems);
  return result;
}

ReadBookResult readBookFile(const std::string& path, const BookSettings& settings) {
  std::string fault;
  const auto bytes = readTextFile(path, fault);
  if (!bytes) return {std::nullopt, {unreadableFile(path, fault)}};
  return readBook(*bytes, path, settings);
}

}  // namespace model
