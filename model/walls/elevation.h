// Wall elevations drawn with rectangles: courses, steps, openings, lintels.
//
// In an elevation x is s, metres along the wall, and y is z, the level.
#pragma once

#include <vector>

#include "model/geometry/polygon.h"

namespace model {

struct Rect {
  double s0 = 0, z0 = 0, s1 = 0, z1 = 0;

  bool empty() const { return s1 - s0 < 1e-6 || z1 - z0 < 1e-6; }
  bool overlaps(const Rect& other) const {
    return s0 < other.s1 - 1e-6 && other.s0 < s1 - 1e-6 && z0 < other.z1 - 1e-6 &&
           other.z0 < z1 - 1e-6;
  }
};

// What is in any of `add` and in none of `cut`, as regions that do not touch each other: where two
// parts would meet in a point only, both draw back from it by a tenth of a millimetre, because a
// wall cannot hang on a line. Lines nearer than a micrometre count as one; otherwise exact.
Regions fromRectangles(const std::vector<Rect>& add, const std::vector<Rect>& cut);

}  // namespace model
