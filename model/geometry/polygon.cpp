#include "model/geometry/polygon.h"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "model/geometry/orientation.h"

namespace model {
namespace {

double squaredDistance(const Vec2& a, const Vec2& b, const Vec2& p) {
  const Vec2 ab = b - a, ap = p - a;
  const double length2 = ab.x * ab.x + ab.y * ab.y;
  const double t = length2 > 0 ? std::clamp((ap.x * ab.x + ap.y * ab.y) / length2, 0.0, 1.0) : 0.0;
  const Vec2 d = ap - ab * t;
  return d.x * d.x + d.y * d.y;
}

// Even-odd rule, for points that are not on the outline.
bool insideOutline(const Polygon& polygon, const Vec2& p) {
  bool inside = false;
  for (size_t i = 0, n = polygon.size(); i < n; ++i) {
    const Vec2 &a = polygon[i], &b = polygon[(i + 1) % n];
    if ((a.y > p.y) == (b.y > p.y)) continue;
    if ((orientation(a, b, p) > 0) == (b.y > a.y)) inside = !inside;
  }
  return inside;
}

// Do two edges that share the point `shared` run back over each other?
bool foldsBack(const Vec2& before, const Vec2& shared, const Vec2& after) {
  const Vec2 in = shared - before, out = after - shared;
  return orientation(before, shared, after) == 0 && in.x * out.x + in.y * out.y <= 0;
}

Vec2 leftNormal(const Vec2& a, const Vec2& b) {
  const Vec2 d = b - a;
  const double length = std::hypot(d.x, d.y);
  return Vec2{-d.y / length, d.x / length};
}

}  // namespace

double cross(const Vec2& a, const Vec2& b) { return a.x * b.y - a.y * b.x; }

double signedArea(const Polygon& polygon) {
  if (polygon.size() < 3) return 0;
  // From the first point, so that a plan far from the datum keeps its digits.
  const Vec2 origin = polygon[0];
  double twice = 0;
  for (size_t i = 1; i + 1 < polygon.size(); ++i)
    twice += cross(polygon[i] - origin, polygon[i + 1] - origin);
  return twice / 2;
}

double area(const Region& region) {
  double sum = std::abs(signedArea(region.outer));
  for (const Polygon& hole : region.holes) sum -= std::abs(signedArea(hole));
  return sum;
}

double area(const Regions& regions) {
  double sum = 0;
  for (const Region& region : regions) sum += area(region);
  return sum;
}

std::optional<std::array<size_t, 2>> crossingEdges(const Polygon& polygon) {
  const size_t n = polygon.size();
  for (size_t i = 0; i < n; ++i)
    if (polygon[i] == polygon[(i + 1) % n]) return std::array<size_t, 2>{i, (i + 1) % n};
  for (size_t i = 0; i < n; ++i) {
    const Vec2 &a = polygon[i], &b = polygon[(i + 1) % n];
    for (size_t j = i + 1; j < n; ++j) {
      const Vec2 &c = polygon[j], &d = polygon[(j + 1) % n];
      const bool next = j == i + 1, previous = i == 0 && j == n - 1;
      bool wrong = false;
      if (next)
        wrong = foldsBack(a, b, d);
      else if (previous)
        wrong = foldsBack(c, a, b);
      else
        wrong = segmentsMeet(a, b, c, d);
      if (wrong) return std::array<size_t, 2>{i, j};
    }
  }
  return std::nullopt;
}

bool contains(const Polygon& polygon, const Vec2& point, double tolerance) {
  for (size_t i = 0, n = polygon.size(); i < n; ++i)
    if (squaredDistance(polygon[i], polygon[(i + 1) % n], point) <= tolerance * tolerance)
      return true;
  return insideOutline(polygon, point);
}

bool contains(const Region& region, const Vec2& point, double tolerance) {
  if (!contains(region.outer, point, tolerance)) return false;
  for (const Polygon& hole : region.holes)
    if (insideOutline(hole, point) && distanceToOutline(hole, point) > tolerance) return false;
  return true;
}

double distanceToOutline(const Polygon& polygon, const Vec2& point) {
  double least = 1e300;
  for (size_t i = 0, n = polygon.size(); i < n; ++i)
    least = std::min(least, squaredDistance(polygon[i], polygon[(i + 1) % n], point));
  return std::sqrt(least);
}

Polygon offsetMitred(const Polygon& polygon, double inward) {
  return offsetMitred(polygon, std::vector<double>(polygon.size(), inward));
}

Polygon offsetMitred(const Polygon& polygon, const std::vector<double>& inward) {
  const size_t n = polygon.size();
  assert(inward.size() == n);
  Polygon result(n);
  for (size_t i = 0; i < n; ++i) {
    const size_t before = (i + n - 1) % n, after = (i + 1) % n;
    const Vec2 n1 = leftNormal(polygon[before], polygon[i]);
    const Vec2 n2 = leftNormal(polygon[i], polygon[after]);
    const double d1 = inward[before], d2 = inward[i], det = cross(n1, n2);
    // In line: both edges move alike, so the corner moves square to them.
    if (std::abs(det) < 1e-9) {
      assert(std::abs(d1 - d2) < 1e-9);
      result[i] = polygon[i] + n2 * d2;
    } else {
      result[i] = polygon[i] + Vec2{(d1 * n2.y - d2 * n1.y) / det, (n1.x * d2 - n2.x * d1) / det};
    }
  }
  return result;
}

Region ring(const Polygon& outer, const Polygon& inner) {
  Region region{outer, {inner}};
  if (signedArea(region.outer) < 0) std::reverse(region.outer.begin(), region.outer.end());
  Polygon& hole = region.holes[0];
  if (signedArea(hole) > 0) std::reverse(hole.begin(), hole.end());
  return region;
}

std::vector<Vec2> regionPoints(const Region& region) {
  std::vector<Vec2> points = region.outer;
  for (const Polygon& hole : region.holes) points.insert(points.end(), hole.begin(), hole.end());
  return points;
}

}  // namespace model
