// A level book worked out, as a table and as a page to read.
#pragma once

#include "model/exchange/tables.h"
#include "model/levelling/close_book.h"

namespace model {

// The columns of the method, one row for each booking. Written as CSV it reads back as the same
// book. `adjusted` adds each row's correction and adjusted level.
Table bookTable(const LevelBook& book, const ReducedBook& reduced, bool adjusted);

// The table with its sums, the checks on the arithmetic, and how the book closes, for people.
std::string bookPage(const LevelBook& book, const ReducedBook& reduced,
                     const std::optional<Closing>& closing, bool adjusted);

}  // namespace model
