// What is wrong with the bookings of a level book, whether read from a file or typed.
#pragma once

#include <string>

#include "model/levelling/level_book.h"
#include "model/problems.h"

namespace model {

// In the order of the rows. A reading that is not finite stands for one that is there but could not
// be read: it takes its place in the order of sights and is not looked at otherwise. Warnings (a
// book that does not close, points and hand-worked levels that disagree) only when there is no
// error.
Problems checkBook(const LevelBook& book, const std::string& file, const BookSettings& settings);

}  // namespace model
