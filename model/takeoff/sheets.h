// How many whole boards a list of pieces is cut from.
#pragma once

#include <vector>

#include "model/geometry/solid.h"

namespace model {

struct PieceSize {
  double length = 0, height = 0;  // metres
};

// The sizes of a solid's separate pieces: along a level direction (unit), and upright.
std::vector<PieceSize> pieceSizes(const Solid& solid, const Vec3& along);

// Boards are ripped into strips as high as a piece, and strips cut to length: longest pieces first,
// each from the first strip that has enough left. A piece larger than a board counts for as many
// as it covers.
double sheetsFor(std::vector<PieceSize> pieces, double length, double height);

}  // namespace model
