// Plans drawn at random: any shape, and shapes whose walls are in line.
#pragma once

#include <random>

#include "model/geometry/polygon.h"

namespace model::test {

using Random = std::mt19937;

// A simple polygon with `corners` corners within `size` metres, on the millimetre; no two of its
// edges are meant to be in line or parallel.
Polygon anyPlan(Random& random, int corners, double size);

// The outline of `cells` squares of a grid joined side to side, without holes and nowhere touching
// itself at a corner: walls in line and equal wings all over. With `keep`, points in line at every
// grid crossing stay. `x` and `y` scale the grid.
Polygon gridPlan(Random& random, int cells, bool keep, double x = 1, double y = 1);

// `teeth` equal wings on one spine: U with two, E with three.
Polygon combPlan(int teeth, double tooth, double gap, double reach, double spine);

// A cross of equal arms, for which everything meets in the middle at once when arm = width / 2.
Polygon plusPlan(double width, double arm);

Polygon regularPlan(int corners, double radius, double turn = 0);

Polygon turned(const Polygon& polygon, double angle);
Polygon moved(const Polygon& polygon, const Vec2& by);

}  // namespace model::test
