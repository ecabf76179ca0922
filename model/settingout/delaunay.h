// Delaunay triangulation of points on plan.
#pragma once

#include <array>
#include <vector>

#include "model/vec.h"

namespace model {

using Triangles = std::vector<std::array<unsigned, 3>>;

// Anticlockwise triangles that cover the points' convex hull; every point is a corner of one,
// unless all points lie on one line (then there are no triangles). Points must differ by more
// than a micrometre. Deterministic: depends on the coordinates and their order only.
Triangles delaunay(const std::vector<Vec2>& points);

}  // namespace model
