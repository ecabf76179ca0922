// Breaking a text into lines.
#pragma once

#include <functional>
#include <string>
#include <vector>

namespace viewer {

// Lines no wider than `width` by the measure given, broken at spaces; a word that is wider by
// itself, or has no spaces because its script uses none, is broken between characters. At least one
// character stands on each line.
std::vector<std::string> brokenLines(const std::string& text, float width,
                                     const std::function<float(const std::string&)>& widthOf);

}  // namespace viewer
