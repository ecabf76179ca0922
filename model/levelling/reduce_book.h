// A level book worked out: the reduced level of every point, by either method, with the sums that
// prove the arithmetic.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/levelling/level_book.h"

namespace model {

enum class BookMethod {
  RiseAndFall,  // each point from the one before it
  Collimation,  // each point from the height of the instrument's line
};

struct ReducedRow {
  size_t setUp = 0;                   // from which it was read, from 0; a change point: the first
  std::optional<double> rise, fall;   // from the row before; RiseAndFall only, never both
  std::optional<double> collimation;  // of the set-up that begins here; Collimation only
  double level = 0;                   // from the readings alone
  double correction = 0;              // added to it by adjusting
  std::optional<double> known;        // beforehand
  double adjusted() const { return level + correction; }
};

// Figures that must be the same, each with its name: "backsights less foresights".
struct ArithmeticCheck {
  std::vector<std::string> names;
  std::vector<double> figures;
  bool holds() const;  // within what adding in doubles can differ
};

struct BookSums {
  double backsights = 0, intermediates = 0, foresights = 0, rises = 0, falls = 0;
};

struct ReducedBook {
  BookMethod method = BookMethod::RiseAndFall;
  std::vector<ReducedRow> rows;  // as the book's
  size_t setUps = 0;
  BookSums sums;
  // Rise and fall: backsights less foresights, rises less falls, last level less first.
  // Collimation: backsights less foresights and last less first; and, for the intermediate sights
  // too, the sum of all levels but the first beside each collimation times its sights, less those
  // sights. Source: [NAVEDTRA-14071] for the first; the others from the definition of the columns.
  std::vector<ArithmeticCheck> checks;
};

// `book` is one that checkBook finds no error in. `start` is the level of its first point.
ReducedBook reduceBook(const LevelBook& book, const BookSettings& settings, BookMethod method);

}  // namespace model
