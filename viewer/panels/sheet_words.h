// Words of the job on a sheet, in the order in which they are read.
#pragma once

#include <string>

namespace viewer {

// Into the current Dear ImGui window, broken at its edge.
void wrappedWords(const std::string& text);
// The same in the quieter ink.
void quietWords(const std::string& text);

}  // namespace viewer
