// Words of the job on a sheet, in the order in which they are read.
#pragma once

#include <string>

namespace viewer {

// Into the current Dear ImGui window, broken at its edge.
void wrappedWords(const std::string& text);
// The same in the quieter ink.
void quietWords(const std::string& text);
// In bold, and in bold for what is wrong.
void boldWords(const std::string& text);
void cautionWords(const std::string& text);
// As much of it as fits, with three dots.
std::string shortenedWords(const std::string& text, float width);
// At the right of the column, as figures stand.
void wordsAtRight(const std::string& text);
void boldAtRight(const std::string& text);

}  // namespace viewer
