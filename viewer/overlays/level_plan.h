// How so many levels go into one or two columns of the sheet, none left out.
#pragma once

#include <cstddef>

namespace viewer {

struct LevelPlan {
  size_t right = 0, left = 0;  // levels in each column
  size_t perLine = 1;          // levels on one line of text; more than one only in great need
  float text = 16;             // size of the text, pixels
};

// A line of text with what parts it from the next, in sizes of the text.
inline constexpr float kLevelLine = 1.06f;

// Heights of the two columns in pixels, each with a line of heading; `leftHeight` is 0 when there
// is no room for a second one. Text keeps its size while it can; then the second column is used,
// then the text shrinks to the least that can be read, then levels share lines.
LevelPlan planLevels(size_t count, float rightHeight, float leftHeight, float unit);

// True when one column of that height takes so many at a size that is read with ease.
bool fitWithEase(size_t count, float height, float unit);

// Lines of text that fit under the heading of a column.
size_t levelLines(float height, float text);

}  // namespace viewer
