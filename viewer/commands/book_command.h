// `book`: a level book from CSV, worked out, checked and closed.
#pragma once

#include <optional>
#include <string>

#include "model/exchange/tables.h"
#include "model/levelling/reduce_book.h"

namespace viewer {

struct BookCommand {
  std::string file;
  std::string job;  // whose bench marks are known; empty: none
  model::TableStyle style = model::TableStyle::People;
  std::string method = "rise-and-fall";  // or "collimation"
  std::optional<double> start, close;    // levels in place of the book's
  std::optional<double> staff;           // metres
  std::optional<double> allow;           // millimetres over one set-up
  bool adjust = false;
  bool anyway = false;  // adjust even past the allowance
};

// Prints to standard output and returns the exit status.
int runBook(const BookCommand& options);

}  // namespace viewer
