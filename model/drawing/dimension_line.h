// Dimension lines: a line with an oblique tick at each end, the figure over it.
#pragma once

#include <string>

#include "model/drawing/clear_space.h"
#include "model/drawing/sheet.h"

namespace model {

// All on the paper, mm.
struct DimensionLine {
  Vec2 from{0, 0}, to{0, 0};          // ends of the line
  Vec2 fromFoot{0, 0}, toFoot{0, 0};  // the points that it measures between
  std::string figure;
  double size = 2.5;  // of its capitals
};

// How a text along a line is turned so that it reads from the foot or the right of the sheet:
// degrees above -75 up to 105.
double readingAngle(const Vec2& along);

// Draws the line, extension lines from near the feet to just past it (none where a foot is on the
// line) and the figure: over the line's middle if there is room, else along it, below, further out
// with a leader, or beyond an end. What is drawn is taken in `space`. False, with nothing drawn,
// when no place for the figure is free.
bool drawDimension(Sheet& sheet, ClearSpace& space, const DimensionLine& line,
                   const TextWidth& widthOf);

}  // namespace model
