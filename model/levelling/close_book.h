// How a level book closes on a known level, whether that is good enough, and the closing error
// spread over the book.
#pragma once

#include <optional>
#include <string>

#include "model/levelling/reduce_book.h"

namespace model {

struct Closing {
  std::string on;               // the last point
  double known = 0, found = 0;  // its level beforehand, and from the readings
  double allowed = 0;           // size of error, whole millimetres
  size_t setUps = 0;
  std::optional<double> distance;                 // levelled, when every change point has one
  double error() const { return found - known; }  // positive: the book closes high
  // Both in whole millimetres, as a staff is read.
  bool within() const;
};

// Nothing when the last point's level is not known.
std::optional<Closing> closeBook(const LevelBook& book, const ReducedBook& reduced,
                                 const Allowance& allowance);

enum class Adjust {
  WithinAllowance,  // not when the error is too large: level it again
  Anyway,
};

// Spreads the closing error over the set-ups: by the distance levelled when every change point has
// one, else evenly. A change point and the intermediate sights before it have the correction of
// their set-up; the last point then has its known level. Equal parts: [NAVEDTRA-14071]; by
// distance and by set-up: [MAHUN-E].
// Returns why nothing was adjusted; nothing when it was (or there was no error to spread).
std::optional<std::string> adjustBook(const LevelBook& book, ReducedBook& reduced,
                                      const std::optional<Closing>& closing, Adjust adjust);

}  // namespace model
