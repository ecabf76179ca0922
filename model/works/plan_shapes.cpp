#include "model/works/plan_shapes.h"

#include <algorithm>

#include <glm/geometric.hpp>

namespace model {

namespace {

// True when some side of a has all of b on its outside.
bool parted(const Polygon& a, const Polygon& b) {
  for (size_t i = 0; i < a.size(); ++i) {
    const Vec2 p = a[i], u = a[(i + 1) % a.size()] - p;
    const double length = glm::length(u);
    if (length < 1e-9) continue;
    if (std::all_of(b.begin(), b.end(),
                    [&](const Vec2& q) { return cross(u, q - p) <= 1e-9 * length; }))
      return true;
  }
  return false;
}

}  // namespace

Polygon rectangleOnPlan(const Vec2& centre, const Vec2& along, double length, double width) {
  const Vec2 u = along * (length / 2), v = Vec2{-along.y, along.x} * (width / 2);
  return {centre - u - v, centre + u - v, centre + u + v, centre - u + v};
}

bool overlapping(const Polygon& a, const Polygon& b) { return !parted(a, b) && !parted(b, a); }

Polygon edgeStrip(const Vec2& a, const Vec2& b, double from, double to) {
  const Vec2 along = glm::normalize(b - a), inward{-along.y, along.x};
  return {a + inward * from, b + inward * from, b + inward * to, a + inward * to};
}

Regions edgeStrips(const Regions& area, double from, double to) {
  Regions strips;
  const auto round = [&](const Polygon& polygon) {
    for (size_t i = 0; i < polygon.size(); ++i) {
      strips.push_back({edgeStrip(polygon[i], polygon[(i + 1) % polygon.size()], from, to), {}});
    }
  };
  for (const Region& region : area) {
    round(region.outer);
    for (const Polygon& hole : region.holes) round(hole);
  }
  return intersect(area, unite(strips, {}));
}

bool holds(const Regions& area, const Polygon& figure) {
  const auto inside = [&](const Vec2& p) {
    return std::any_of(area.begin(), area.end(), [&](const Region& r) { return contains(r, p); });
  };
  for (size_t i = 0; i < figure.size(); ++i) {
    const Vec2 next = figure[(i + 1) % figure.size()];
    if (!inside(figure[i]) || !inside((figure[i] + next) / 2.0)) return false;
  }
  return true;
}

}  // namespace model
