// Words of the job on a sheet, in the order in which they are read.
#pragma once

#include <string>

namespace viewer {

// Into the current Dear ImGui window, broken at its edge.
void wrappedWords(const std::string& text);
// The same in the quieter ink.
void quietWords(const std::string& text);
// At the right of the column, as figures stand.
void wordsAtRight(const std::string& text);
void boldAtRight(const std::string& text);

}  // namespace viewer
