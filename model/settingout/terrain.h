// The ground before work starts: a triangulated surface through the drawing's spot levels.
#pragma once

#include <array>
#include <vector>

#include "model/geometry/solid.h"
#include "model/job/job.h"

namespace model {

struct Terrain {
  Polygon boundary;  // anticlockwise
  std::vector<Vec3> points;
  std::vector<std::array<unsigned, 3>>
      triangles;  // anticlockwise from above; they cover the boundary

  // Level of the surface; outside the triangles, of the nearest point on it.
  double levelAt(const Vec2& p) const;
  // The plane of triangle i.
  Plane planeOf(size_t triangle) const;
};

struct LevelRange {
  double low = 0, high = 0;
};

// The lowest and highest level of the surface along a closed outline; exact, because the surface is
// plane between the outline's points and its crossings with the triangles' edges.
LevelRange levelsAlong(const Terrain& terrain, const Polygon& outline);
// The same along the straight line from a to b.
LevelRange levelsAlong(const Terrain& terrain, const Vec2& a, const Vec2& b);
// Where the line from a to b crosses edges of the triangles, as fractions of it, sorted.
std::vector<double> terrainBreaks(const Terrain& terrain, const Vec2& a, const Vec2& b);

// Passes exactly through every spot level and is piecewise plane between them (Delaunay). Boundary
// corners without a spot level take the inverse-distance mean of the spots.
Terrain deriveTerrain(const Job& job);

// The site: the job's boundary, or 8 m round everything that stands or will stand. Anticlockwise.
Polygon siteBoundary(const Job& job);

}  // namespace model
