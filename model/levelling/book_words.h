// What is said of a level book, in a foreman's words.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/levelling/close_book.h"

namespace model {

// "closes 9 low on TBM 2; 9 is allowed over 3 set-ups", and when it is too much "; level it again".
std::string closingText(const Closing& closing);

// "does not close: the level of Pin 7 is not known beforehand; ..."
std::string notClosedText(const LevelBook& book);

// "rises less falls -1.162, ...: they agree".
std::string checkText(const ArithmeticCheck& check);

// One line for each point whose level was known beforehand besides the first and the last: "TBM 2
// is read 3 high". Empty when there is none.
std::vector<std::string> knownPointTexts(const LevelBook& book, const ReducedBook& reduced);

// All that is said under a book that has been worked out, a sentence each: the checks on its
// arithmetic, how it closes, the points known beforehand and, when it was, how it was adjusted.
std::vector<std::string> bookSentences(const LevelBook& book, const ReducedBook& reduced,
                                       const std::optional<Closing>& closing, bool adjusted);

// "Known from the job: Bolt in gate pier +0.185; Nail in kerb -0.860", or that no point is one of
// the marks.
std::string marksText(const LevelBook& book, const std::vector<Mark>& marks);

// "rise and fall", "height of collimation".
std::string methodName(BookMethod method);

// "12 high", "12 low", "on": a height off another, in millimetres.
std::string highOrLow(double metres);

}  // namespace model
