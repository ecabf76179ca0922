// What the levels of a book say against it; a part of checkBook.
#pragma once

#include <string>

#include "model/levelling/level_book.h"
#include "model/problems.h"

namespace model {

// Warnings only: a book that does not close, a point whose levels disagree, levels worked out by
// hand that are others. `book` has no errors.
Problems checkBookLevels(const LevelBook& book, const std::string& file,
                         const BookSettings& settings);

}  // namespace model
