// A level book while it is typed: rows of cells as they stand under the fingers, worked out as far
// as they go.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "model/levelling/book_columns.h"
#include "model/levelling/close_book.h"

namespace model {

inline constexpr std::array kTypedColumns{
    BookColumn::Point,    BookColumn::Backsight, BookColumn::Intermediate, BookColumn::Foresight,
    BookColumn::Distance, BookColumn::Known,     BookColumn::Booked,       BookColumn::Remark};

struct TypedBooking {
  std::array<std::string, kTypedColumns.size()> cells;  // as kTypedColumns
  std::vector<std::string> others;                      // as TypedBook::otherColumns
  std::string& operator[](BookColumn column);
  const std::string& operator[](BookColumn column) const;
  bool empty() const;
};

struct TypedBook {
  std::vector<TypedBooking> rows;
  std::vector<std::string> otherColumns;  // of the file's owner; kept, and not looked at
  char separator = ',';
};

// The book of a file, whatever is wrong with its bookings. Nothing, with the problems, when its
// rows and cells cannot be told apart, for then something would be lost in saving it. Columns that
// are worked out (rise, fall, collimation, adjusted) are left out.
std::optional<TypedBook> readTypedBook(std::string_view text, const std::string& file,
                                       Problems& problems);

// CSV as readBook reads it; empty rows are left out, and columns that no row uses.
std::string typedBookText(const TypedBook& book);

// Gives marks their level where the column known says nothing, so that the file stands by itself.
void fillKnownLevels(TypedBook& book, const BookSettings& settings);

// What stands beside one typed row.
struct WorkedRow {
  std::optional<double> rise, fall, collimation, level, adjusted;
  std::vector<std::string> wrong;  // what is wrong and what would be right, as readBook says it
  std::vector<std::string> unfinished;  // the same, of what is right as soon as the book goes on
  std::vector<std::string> lookAt;      // warnings
};

struct WorkedBook {
  std::vector<WorkedRow> rows;         // as the typed ones
  std::vector<std::string> sentences;  // checks, closing, adjustment; what is wrong with no one row
  std::optional<Closing> closing;
  bool whole = false;     // no booking is wrong
  bool adjusted = false;  // the adjusted levels stand
};

// Rows behind a wrong one have no levels, and an unfinished book has those up to its last row.
WorkedBook workOut(const TypedBook& book, const std::string& file, const BookSettings& settings,
                   BookMethod method, bool adjust);

}  // namespace model
