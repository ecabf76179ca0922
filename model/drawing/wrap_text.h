// Texts that keep to a width.
#pragma once

#include <string>
#include <vector>

#include "model/drawing/sheet.h"

namespace model {

struct Letters {
  double size = 1.8;
  bool bold = false;
};

// Lines of at most `width` mm, broken at spaces; a word that is wider is broken between its
// characters (not before a combining mark). At least one line, which may be empty.
std::vector<std::string> wrapped(const std::string& text, double width, const Letters& letters,
                                 const TextWidth& widthOf);

// What of a text is left after the first of its lines, as wrapped() gives them.
std::string textAfter(const std::string& text, const std::vector<std::string>& lines);

// The text itself, or as much of it as goes into the width with an ellipsis.
std::string shortened(const std::string& text, double width, const Letters& letters,
                      const TextWidth& widthOf);

// The widest word: a column that is narrower breaks it.
double widestWord(const std::string& text, const Letters& letters, const TextWidth& widthOf);

}  // namespace model
