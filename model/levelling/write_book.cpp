// The writing half of read_book.h.
#include <algorithm>

#include "model/job/csv_rows.h"
#include "model/job/lengths.h"
#include "model/levelling/book_columns.h"
#include "model/levelling/read_book.h"

namespace model {
namespace {

constexpr BookColumn kOrder[] = {
    BookColumn::Point,    BookColumn::Backsight, BookColumn::Intermediate, BookColumn::Foresight,
    BookColumn::Distance, BookColumn::Known,     BookColumn::Booked,       BookColumn::Remark};

std::string numberText(const std::optional<double>& value) {
  return value ? levelValueText(*value) : "";
}

std::string cellText(const Booking& booking, BookColumn column) {
  switch (column) {
    case BookColumn::Point:
      return booking.point;
    case BookColumn::Backsight:
      return numberText(booking.backsight);
    case BookColumn::Intermediate:
      return numberText(booking.intermediate);
    case BookColumn::Foresight:
      return numberText(booking.foresight);
    case BookColumn::Distance:
      return numberText(booking.distance);
    case BookColumn::Known:
      return numberText(booking.known);
    case BookColumn::Booked:
      return numberText(booking.booked);
    case BookColumn::Remark:
      return booking.remark;
    case BookColumn::WorkedOut:
      break;
  }
  return {};
}

bool isWritten(const LevelBook& book, BookColumn column) {
  if (column <= BookColumn::Foresight) return true;
  return std::any_of(book.bookings.begin(), book.bookings.end(),
                     [&](const Booking& booking) { return !cellText(booking, column).empty(); });
}

}  // namespace

std::string writeBook(const LevelBook& book) {
  std::vector<BookColumn> columns;
  std::copy_if(std::begin(kOrder), std::end(kOrder), std::back_inserter(columns),
               [&](BookColumn column) { return isWritten(book, column); });
  std::string text;
  const auto write = [&](const auto& cell) {
    for (size_t i = 0; i < columns.size(); ++i) {
      text += (i > 0 ? "," : "") + csvCellText(cell(columns[i]));
    }
    text += "\r\n";
  };
  write(columnName);
  for (const Booking& booking : book.bookings) {
    write([&](BookColumn column) { return cellText(booking, column); });
  }
  return text;
}

}  // namespace model
