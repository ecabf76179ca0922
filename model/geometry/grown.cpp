#include "model/geometry/grown.h"

#include <cmath>
#include <optional>

#include <glm/geometric.hpp>

namespace model {

namespace {

// The polygon moved out corner by corner; nothing when an edge would be swallowed.
std::optional<Polygon> movedOut(const Polygon& polygon, double distance) {
  Polygon moved = offsetMitred(polygon, -distance);
  const size_t n = polygon.size();
  for (size_t i = 0; i < n; ++i) {
    const Vec2 before = polygon[(i + 1) % n] - polygon[i], after = moved[(i + 1) % n] - moved[i];
    if (glm::dot(before, after) <= 0) return std::nullopt;
  }
  if (crossingEdges(moved)) return std::nullopt;
  return moved;
}

// Booleans leave points along straight edges, a hair off them: those go.
Polygon straightened(const Polygon& polygon) {
  constexpr double kStraight = 5e-5;
  Polygon result;
  const size_t n = polygon.size();
  for (size_t i = 0; i < n; ++i) {
    const Vec2 a = result.empty() ? polygon[n - 1] : result.back(), p = polygon[i];
    const Vec2 u = polygon[(i + 1) % n] - a;
    const double length = glm::length(u);
    if (length > kStraight && std::abs(cross(u, p - a)) < kStraight * length &&
        glm::dot(p - a, u) > 0)
      continue;
    result.push_back(p);
  }
  return result;
}

}  // namespace

Regions grown(const Polygon& polygon, double distance) {
  Regions result{{polygon, {}}};
  if (distance <= 0) return result;
  if (auto moved = movedOut(polygon, distance)) return {{std::move(*moved), {}}};
  const size_t n = polygon.size();
  const auto outward = [&](size_t i) {
    const Vec2 along = glm::normalize(polygon[(i + 1) % n] - polygon[i]);
    return Vec2{along.y, -along.x} * distance;
  };
  Regions pieces;
  for (size_t i = 0; i < n; ++i) {
    const Vec2 a = polygon[i], b = polygon[(i + 1) % n], out = outward(i);
    pieces.push_back({{a, a + out, b + out, b}, {}});
    const Vec2 before = outward((i + n - 1) % n);
    const double turn = cross(before, out);
    if (turn <= 1e-12) continue;
    // Both offsets are `distance` long, so the mitre lies on their sum.
    const Vec2 sum = before + out;
    const Vec2 mitre = sum * (2 * distance * distance / glm::dot(sum, sum));
    pieces.push_back({{a, a + before, a + mitre, a + out}, {}});
  }
  result = unite(result, pieces);
  for (Region& region : result) {
    region.outer = straightened(region.outer);
    for (Polygon& hole : region.holes) hole = straightened(hole);
  }
  return result;
}

}  // namespace model
