// What a book takes as known, its distances and the levels of marks; a part of checkBook.
#pragma once

#include <string>

#include "model/levelling/level_book.h"
#include "model/problems.h"

namespace model {

// Errors only, as in check_book.h.
Problems checkBookKnown(const LevelBook& book, const std::string& file,
                        const BookSettings& settings);

}  // namespace model
