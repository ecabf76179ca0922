// Plane figures: simple polygons, regions with holes, offsets and booleans.
//
// Conventions: a Polygon is simple, not closed (the first point is not repeated) and, unless a
// function says otherwise, anticlockwise. Collinear points are real points and are kept.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "model/vec.h"

namespace model {

using Polygon = std::vector<Vec2>;

// An outer ring, anticlockwise, with holes, clockwise, strictly inside it.
struct Region {
  Polygon outer;
  std::vector<Polygon> holes;
};
using Regions = std::vector<Region>;

// Square metres; positive when anticlockwise.
double signedArea(const Polygon& polygon);
double area(const Region& region);
double area(const Regions& regions);

// The z component of a x b.
double cross(const Vec2& a, const Vec2& b);

// Returns the indices of two edges (edge i runs from point i to i+1) that cross or touch where
// they should not, or nothing when the polygon is simple. O(n log n) is not needed: n is small.
std::optional<std::array<size_t, 2>> crossingEdges(const Polygon& polygon);

// True inside or within `tolerance` (metres) of the edge. Any orientation.
bool contains(const Polygon& polygon, const Vec2& point, double tolerance = 1e-9);
bool contains(const Region& region, const Vec2& point, double tolerance = 1e-9);

// Shortest distance from the point to the outline, metres, >= 0.
double distanceToOutline(const Polygon& polygon, const Vec2& point);

// Moves every edge to its own left (inward for an anticlockwise polygon) by its own distance and
// mitres the corners, so that point i of the result is corner i of the input. Negative distances
// move outward. Neighbouring edges that are in line must have equal distances (asserted).
// The caller makes sure that the distance is small against the edges: no edge is dropped.
Polygon offsetMitred(const Polygon& polygon, double inward);
Polygon offsetMitred(const Polygon& polygon, const std::vector<double>& inward);

// Booleans, through Clipper on a grid of 0.001 mm. Results are regions in a deterministic order;
// slivers thinner than 0.01 mm are dropped.
Regions unite(const Regions& a, const Regions& b);
Regions subtract(const Regions& a, const Regions& b);
Regions intersect(const Regions& a, const Regions& b);

// The ring between two polygons, `inner` inside `outer`.
Region ring(const Polygon& outer, const Polygon& inner);

// Triangles of a region as index triples into `regionPoints(region)` (outer ring, then each hole
// in order). Every point of the region is a corner of the triangulation, collinear points
// included, and no point is added: so prisms built on it are closed. Anticlockwise triangles.
std::vector<std::array<unsigned, 3>> triangulate(const Region& region);
std::vector<Vec2> regionPoints(const Region& region);

}  // namespace model
