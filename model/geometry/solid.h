// Closed, outward-facing triangle solids and how to make the simple ones.
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "model/geometry/polygon.h"
#include "model/vec.h"

namespace model {

// A plane over the plan: z = slope.x * x + slope.y * y + level.
struct Plane {
  Vec2 slope{0, 0};
  double level = 0;

  double at(const Vec2& p) const { return slope.x * p.x + slope.y * p.y + level; }
  static Plane flat(double level) { return Plane{{0, 0}, level}; }
};

struct Bounds {
  Vec3 low{1e300, 1e300, 1e300};
  Vec3 high{-1e300, -1e300, -1e300};

  bool empty() const { return low.x > high.x; }
  void add(const Vec3& p);
  void add(const Bounds& other);
};

// One or more closed shells. Triangles run anticlockwise seen from outside; points are shared
// inside a shell, so that every edge is used exactly once in each direction.
struct Solid {
  std::vector<Vec3> points;
  std::vector<std::array<std::uint32_t, 3>> triangles;

  bool empty() const { return triangles.empty(); }
  void append(const Solid& other);
};

// Cubic metres, signed: positive for outward-facing shells.
double volume(const Solid& solid);
// Square metres of the whole surface.
double surfaceArea(const Solid& solid);
Bounds bounds(const Solid& solid);

// The region between two planes over it. `bottom` must lie under `top` over the whole region; they
// may meet along edges of it (a wedge): no flat triangles are made there.
Solid prism(const Region& region, const Plane& bottom, const Plane& top);
Solid prism(const Region& region, double bottom, double top);
Solid prism(const Regions& regions, double bottom, double top);

// A straight bar from a to b with a rectangular section: `width` level and square to it, `depth`
// square to both; centred on the line. For poles, boards, joists. a and b must differ.
Solid bar(const Vec3& a, const Vec3& b, double width, double depth);

// Axis-aligned box.
Solid box(const Vec3& low, const Vec3& high);

// An upright panel: `elevation` (x = along, y = height) given thickness between a front and a back
// face. Point i of the elevation (in regionPoints order) stands at front[i] and back[i]; both
// lists are in that order. Seen from the front, the elevation is anticlockwise. Used for leaves of
// walls, whose ends are mitred and whose tops may follow a roof.
Solid panel(const Region& elevation, const std::vector<Vec3>& front, const std::vector<Vec3>& back);

}  // namespace model
