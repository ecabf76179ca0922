// Small figures on plan that temporary works are placed with.
#pragma once

#include "model/geometry/polygon.h"

namespace model {

// A rectangle round `centre`, anticlockwise: `length` along the unit vector, `width` square to it.
Polygon rectangleOnPlan(const Vec2& centre, const Vec2& along, double length, double width);

// True when two convex figures have more than touch in common.
bool overlapping(const Polygon& a, const Polygon& b);

// The strips inside an area between two distances from each of its edges, square to the edge.
Regions edgeStrips(const Regions& area, double from, double to);
// The same along one edge, from a to b with the area on its left.
Polygon edgeStrip(const Vec2& a, const Vec2& b, double from, double to);

// The whole of a convex figure lies in the area (its corners and the middles of its sides do).
bool holds(const Regions& area, const Polygon& figure);

}  // namespace model
