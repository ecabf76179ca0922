// Triangulation by cutting ears, that keeps every point.
//
// Walls have sills and heads in line, so a corner often lies on the line between two others. An ear
// is therefore cut only when no other corner lies in it, its border included: then its long side
// runs through no corner, what remains is again a simple ring with all its corners, and such a ring
// always has another ear, so nothing in line is ever dropped. Signs are exact (orientation.h).
#include <algorithm>
#include <cmath>
#include <numeric>

#include "model/geometry/orientation.h"
#include "model/geometry/polygon.h"

namespace model {
namespace {

using Triangles = std::vector<std::array<unsigned, 3>>;
using Loop = std::vector<unsigned>;  // indices into the region's points

bool lower(const Vec2& a, const Vec2& b) { return a.x != b.x ? a.x < b.x : a.y < b.y; }

// Does the direction from corner `at` to `to` leave into the inside of the ring (on its left)?
bool leavesInward(const Vec2& before, const Vec2& at, const Vec2& after, const Vec2& to) {
  const bool leftOfIn = orientation(before, at, to) > 0, leftOfOut = orientation(at, after, to) > 0;
  return orientation(before, at, after) > 0 ? leftOfIn && leftOfOut : leftOfIn || leftOfOut;
}

// Can the corner at position k of the loop be joined to point m by a line inside that touches
// nothing on its way?
bool sees(const std::vector<Vec2>& points, const Loop& loop, size_t k, const Vec2& m) {
  const size_t n = loop.size();
  const Vec2& p = points[loop[k]];
  if (!leavesInward(points[loop[(k + n - 1) % n]], p, points[loop[(k + 1) % n]], m)) return false;
  for (size_t i = 0; i < n; ++i) {
    const Vec2 &a = points[loop[i]], &b = points[loop[(i + 1) % n]];
    if (a == p || b == p) {
      const Vec2& other = a == p ? b : a;
      if (other != p && onSegment(p, m, other)) return false;
    } else if (segmentsMeet(a, b, p, m)) {
      return false;
    }
  }
  return true;
}

// The nearest corner of the loop, to the right of m, that sees it. There always is one when the
// region is as promised, since nothing but the loop lies to the right of m.
size_t bridgeTo(const std::vector<Vec2>& points, const Loop& loop, const Vec2& m) {
  std::vector<size_t> order(loop.size());
  std::iota(order.begin(), order.end(), size_t{0});
  const auto distance = [&](size_t k) {
    const Vec2 d = points[loop[k]] - m;
    return d.x * d.x + d.y * d.y;
  };
  std::stable_sort(order.begin(), order.end(),
                   [&](size_t a, size_t b) { return distance(a) < distance(b); });
  for (const size_t k : order)
    if (points[loop[k]].x > m.x && sees(points, loop, k, m)) return k;
  return order[0];
}

// One loop that runs round the outer ring and, over bridges there and back, round every hole.
Loop joinHoles(const Region& region, const std::vector<Vec2>& points) {
  Loop loop(region.outer.size());
  std::iota(loop.begin(), loop.end(), 0u);
  std::vector<Loop> holes;
  unsigned first = unsigned(loop.size());
  for (const Polygon& hole : region.holes) {
    Loop around(hole.size());
    std::iota(around.begin(), around.end(), first);
    first += unsigned(hole.size());
    // Begin at the rightmost point.
    std::rotate(
        around.begin(),
        std::max_element(around.begin(), around.end(),
                         [&](unsigned a, unsigned b) { return lower(points[a], points[b]); }),
        around.end());
    holes.push_back(std::move(around));
  }
  // From the right, so that only what is already joined can lie to the right of a hole.
  std::stable_sort(holes.begin(), holes.end(),
                   [&](const Loop& a, const Loop& b) { return lower(points[b[0]], points[a[0]]); });
  for (const Loop& hole : holes) {
    const size_t k = bridgeTo(points, loop, points[hole[0]]);
    Loop detour = hole;
    detour.push_back(hole[0]);
    detour.push_back(loop[k]);
    loop.insert(loop.begin() + std::ptrdiff_t(k) + 1, detour.begin(), detour.end());
  }
  return loop;
}

// The loop being cut down, as a ring of links.
class EarCutter {
 public:
  EarCutter(const std::vector<Vec2>& points, const Loop& loop)
      : points_(points),
        loop_(loop),
        next_(loop.size()),
        previous_(loop.size()),
        turn_(loop.size()) {
    const size_t n = loop.size();
    for (size_t i = 0; i < n; ++i) {
      next_[i] = (i + 1) % n;
      previous_[i] = (i + n - 1) % n;
    }
    for (size_t i = 0; i < n; ++i) {
      turn_[i] = turnAt(i);
      if (turn_[i] <= 0) blunt_.push_back(i);
    }
  }

  Triangles cut() {
    Triangles triangles;
    triangles.reserve(loop_.size());
    size_t left = loop_.size(), at = 0, sinceLast = 0;
    while (left > 2) {
      if (left == 3 || isEar(at) || sinceLast > left) {
        if (sinceLast > left) at = leastBad(at);
        triangles.push_back({loop_[previous_[at]], loop_[at], loop_[next_[at]]});
        at = unlink(at);
        --left;
        sinceLast = 0;
      } else {
        at = next_[at];
        ++sinceLast;
      }
    }
    return triangles;
  }

 private:
  const Vec2& point(size_t i) const { return points_[loop_[i]]; }
  int turnAt(size_t i) const { return orientation(point(previous_[i]), point(i), point(next_[i])); }

  // Only corners that do not turn left can be the first to reach into an ear. A bridge passes a
  // corner twice; its other passes stand in the ear's own corners and block nothing.
  bool isEar(size_t i) const {
    if (turn_[i] <= 0) return false;
    const Vec2 &a = point(previous_[i]), &b = point(i), &c = point(next_[i]);
    const Vec2 low{std::min({a.x, b.x, c.x}), std::min({a.y, b.y, c.y})};
    const Vec2 high{std::max({a.x, b.x, c.x}), std::max({a.y, b.y, c.y})};
    for (const size_t k : blunt_) {
      const Vec2& p = point(k);
      if (p.x < low.x || p.x > high.x || p.y < low.y || p.y > high.y) continue;
      if (p == a || p == b || p == c) continue;
      if (orientation(a, b, p) >= 0 && orientation(b, c, p) >= 0 && orientation(c, a, p) >= 0)
        return false;
    }
    return true;
  }

  // Takes corner i out. Returns where to look next: one further on, so that cuts do not all fan
  // from one corner.
  size_t unlink(size_t i) {
    const size_t before = previous_[i], after = next_[i];
    next_[before] = after;
    previous_[after] = before;
    std::erase(blunt_, i);
    refresh(before);
    refresh(after);
    return next_[after];
  }
  void refresh(size_t i) {
    const bool wasBlunt = turn_[i] <= 0;
    turn_[i] = turnAt(i);
    if (wasBlunt && turn_[i] > 0) std::erase(blunt_, i);
    if (!wasBlunt && turn_[i] <= 0) blunt_.push_back(i);
  }

  // For rings that are not simple after all: the corner whose triangle does least harm, so that the
  // result still uses every edge once.
  size_t leastBad(size_t from) const {
    size_t best = from;
    double least = 1e300;
    size_t i = from;
    do {
      const double size =
          std::abs(cross(point(i) - point(previous_[i]), point(next_[i]) - point(i)));
      if (size < least) {
        least = size;
        best = i;
      }
      i = next_[i];
    } while (i != from);
    return best;
  }

  const std::vector<Vec2>& points_;
  const Loop& loop_;
  std::vector<size_t> next_, previous_;
  std::vector<int> turn_;
  std::vector<size_t> blunt_;  // positions that do not turn left
};

bool isConvexQuad(const Region& region) {
  const Polygon& p = region.outer;
  if (p.size() != 4 || !region.holes.empty()) return false;
  for (size_t i = 0; i < 4; ++i) {
    if (orientation(p[i], p[(i + 1) % 4], p[(i + 2) % 4]) <= 0) return false;
  }
  return true;
}

}  // namespace

std::vector<std::array<unsigned, 3>> triangulate(const Region& region) {
  if (region.outer.size() < 3) return {};
  // Most things are boxes: the same two ears, at once.
  if (isConvexQuad(region)) return {{3, 0, 1}, {1, 2, 3}};
  const std::vector<Vec2> points = regionPoints(region);
  const Loop loop = joinHoles(region, points);
  return EarCutter(points, loop).cut();
}

}  // namespace model
