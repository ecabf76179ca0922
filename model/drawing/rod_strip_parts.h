// The parts of rod_strips.h. Private to this folder, apart from tests.
#pragma once

#include <string>
#include <vector>

#include "model/drawing/rod_strips.h"

namespace model {

struct RodOfCorner {
  const GaugeRod& rod;
  const WallBuildUp& walls;
  std::string corner;
};

// A piece of a rod between two levels, one above the other on the sheets.
struct RodPiece {
  double low = 0, high = 0;  // metres
  size_t number = 1, of = 1;
};

// Bare rod over the highest mark, to hold it by; metres.
inline constexpr double kRodEnd = 0.020;
// Paper under a strip's join, to paste behind the strip below; mm.
inline constexpr double kFlap = 12;

// The rod in pieces no longer than `longest` metres. Joins keep off marks and course lines.
std::vector<RodPiece> rodPieces(const GaugeRod& rod, double longest);

// Draws one piece into an area that is as wide as the strip; the piece's low end is `kFlap` over
// the area's lower edge, or on it for the first piece.
void drawRodPiece(Sheet& sheet, const Area& area, const RodOfCorner& rod, const RodPiece& piece,
                  const TextWidth& widthOf);

// A block of lines at the height that it would like, mm from anywhere, y up.
struct RodLabel {
  double at = 0;      // of what it names
  double from = 0;    // where its pointer starts, across
  double middle = 0;  // of its first line, once it is placed
  std::vector<std::string> lines;
  size_t boldLines = 0;  // the first ones
};

// Moves labels up or down so that none covers another and all lie between `low` and `high`, as near
// as may be to what they name. `line` is the height of a line. False when they do not all go in.
bool spreadLabels(std::vector<RodLabel>& labels, double low, double high, double line);

}  // namespace model
