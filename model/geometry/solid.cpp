#include "model/geometry/solid.h"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "model/geometry/vector_math.h"

namespace model {
namespace {

using Triangle = std::array<std::uint32_t, 3>;

// Nearer than this a front and a back point are one: the thin end of a wedge.
constexpr double kTogether = 1e-9;

// The solid between two copies of a region, front[i] over back[i]. Where they are one point, no
// sides and no doubled triangles are made.
Solid between(const Region& region, const std::vector<Vec3>& front, const std::vector<Vec3>& back) {
  Solid solid;
  const size_t n = front.size();
  assert(back.size() == n);
  solid.points.reserve(2 * n);
  solid.points.insert(solid.points.end(), front.begin(), front.end());
  std::vector<std::uint32_t> behind(n);
  for (size_t i = 0; i < n; ++i) {
    if (length(front[i] - back[i]) < kTogether) {
      behind[i] = std::uint32_t(i);
    } else {
      behind[i] = std::uint32_t(solid.points.size());
      solid.points.push_back(back[i]);
    }
  }
  const auto apart = [&](std::uint32_t i) { return behind[i] != i; };
  const auto triangles = triangulate(region);
  solid.triangles.reserve(2 * (triangles.size() + n));
  for (const auto& [a, b, c] : triangles) {
    if (!apart(a) && !apart(b) && !apart(c)) continue;
    solid.triangles.push_back({a, b, c});
    solid.triangles.push_back({behind[a], behind[c], behind[b]});
  }
  const auto addSides = [&](std::uint32_t first, size_t count) {
    for (size_t k = 0; k < count; ++k) {
      const auto i = std::uint32_t(first + k), j = std::uint32_t(first + (k + 1) % count);
      if (apart(i)) solid.triangles.push_back({i, behind[i], behind[j]});
      if (apart(j)) solid.triangles.push_back({i, behind[j], j});
    }
  };
  std::uint32_t first = 0;
  addSides(first, region.outer.size());
  first += std::uint32_t(region.outer.size());
  for (const Polygon& hole : region.holes) {
    addSides(first, hole.size());
    first += std::uint32_t(hole.size());
  }
  return solid;
}

}  // namespace

void Bounds::add(const Vec3& p) {
  low = {std::min(low.x, p.x), std::min(low.y, p.y), std::min(low.z, p.z)};
  high = {std::max(high.x, p.x), std::max(high.y, p.y), std::max(high.z, p.z)};
}

void Bounds::add(const Bounds& other) {
  if (other.empty()) return;
  add(other.low);
  add(other.high);
}

void Solid::append(const Solid& other) {
  const auto shift = std::uint32_t(points.size());
  points.insert(points.end(), other.points.begin(), other.points.end());
  triangles.reserve(triangles.size() + other.triangles.size());
  for (const auto& [a, b, c] : other.triangles)
    triangles.push_back({a + shift, b + shift, c + shift});
}

double volume(const Solid& solid) {
  if (solid.empty()) return 0;
  // Tetrahedra from one of the solid's own points, so that a site far from the datum keeps its
  // digits.
  const Vec3 origin = solid.points[solid.triangles[0][0]];
  double six = 0;
  for (const auto& [a, b, c] : solid.triangles)
    six += dot(solid.points[a] - origin, cross(solid.points[b] - origin, solid.points[c] - origin));
  return six / 6;
}

double surfaceArea(const Solid& solid) {
  double twice = 0;
  for (const auto& [a, b, c] : solid.triangles)
    twice += length(cross(solid.points[b] - solid.points[a], solid.points[c] - solid.points[a]));
  return twice / 2;
}

Bounds bounds(const Solid& solid) {
  Bounds result;
  for (const auto& triangle : solid.triangles)
    for (const std::uint32_t i : triangle) result.add(solid.points[i]);
  return result;
}

Solid prism(const Region& region, const Plane& bottom, const Plane& top) {
  std::vector<Vec3> front, back;
  for (const Vec2& p : regionPoints(region)) {
    front.emplace_back(p.x, p.y, top.at(p));
    back.emplace_back(p.x, p.y, bottom.at(p));
  }
  return between(region, front, back);
}

Solid prism(const Region& region, double bottom, double top) {
  return prism(region, Plane::flat(bottom), Plane::flat(top));
}

Solid prism(const Regions& regions, double bottom, double top) {
  Solid solid;
  for (const Region& region : regions) solid.append(prism(region, bottom, top));
  return solid;
}

Solid bar(const Vec3& a, const Vec3& b, double width, double depth) {
  const Vec3 along = (b - a) / length(b - a);
  const double level = std::hypot(along.x, along.y);
  // Level and square to the bar; an upright bar takes the sheet's own axes.
  const Vec3 side = level > 1e-9 ? Vec3{-along.y / level, along.x / level, 0} : Vec3{0, 1, 0};
  const Vec3 up = cross(along, side);
  const Vec3 w = side * (width / 2), d = up * (depth / 2);
  Solid solid;
  solid.points = {a - w - d, a + w - d, a + w + d, a - w + d,
                  b - w - d, b + w - d, b + w + d, b - w + d};
  solid.triangles = {{0, 2, 1}, {0, 3, 2}, {4, 5, 6}, {4, 6, 7}, {0, 1, 5}, {0, 5, 4},
                     {1, 2, 6}, {1, 6, 5}, {2, 3, 7}, {2, 7, 6}, {3, 0, 4}, {3, 4, 7}};
  if (volume(solid) < 0)
    for (Triangle& t : solid.triangles) std::swap(t[1], t[2]);
  return solid;
}

Solid box(const Vec3& low, const Vec3& high) {
  const Region base{{{low.x, low.y}, {high.x, low.y}, {high.x, high.y}, {low.x, high.y}}, {}};
  return prism(base, low.z, high.z);
}

Solid panel(const Region& elevation, const std::vector<Vec3>& front,
            const std::vector<Vec3>& back) {
  return between(elevation, front, back);
}

}  // namespace model
