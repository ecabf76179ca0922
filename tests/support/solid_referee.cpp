#include "tests/support/solid_referee.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numeric>
#include <polyclipping/clipper.hpp>
#include <unordered_map>

namespace model::test {
namespace {

constexpr double kTouch = 5e-5;        // metres: a common skin thinner than this is touching
constexpr double kGrid = 1e7;          // Clipper's steps in a metre
constexpr size_t kMostIntervals = 32;  // heights looked at are four in each

using Loops = std::vector<std::vector<Vec2>>;

std::uint64_t edgeKey(std::uint32_t a, std::uint32_t b) {
  return (std::uint64_t(std::min(a, b)) << 32) | std::max(a, b);
}

Vec2 crossing(const Vec3& a, const Vec3& b, double z) {
  const double t = (z - a.z) / (b.z - a.z);
  return {a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t};
}

// The outlines of a level slice, the solid on their left. No point may lie at z.
Loops sliceLoops(const Solid& solid, double z) {
  struct Cut {
    Vec2 at;
    std::uint64_t next;
  };
  // Going round inside the solid, each outline enters a triangle over one edge and leaves it over
  // another: over the edge that goes down, then over the edge that comes up.
  std::unordered_map<std::uint64_t, Cut> cuts;
  for (const auto& t : solid.triangles) {
    std::uint64_t down = 0, up = 0;
    Vec2 at{0, 0};
    for (size_t k = 0; k < 3; ++k) {
      const std::uint32_t i = t[k], j = t[(k + 1) % 3];
      const Vec3 &a = solid.points[i], &b = solid.points[j];
      if (a.z > z && b.z < z) {
        down = edgeKey(i, j);
        at = crossing(a, b, z);
      } else if (a.z < z && b.z > z) {
        up = edgeKey(i, j);
      }
    }
    if (down != up) cuts[down] = {at, up};
  }
  Loops loops;
  while (!cuts.empty()) {
    std::vector<Vec2> loop;
    auto cut = cuts.begin();
    while (cut != cuts.end()) {
      loop.push_back(cut->second.at);
      const std::uint64_t next = cut->second.next;
      cuts.erase(cut);
      cut = cuts.find(next);
    }
    loops.push_back(std::move(loop));
  }
  return loops;
}

double loopArea(const std::vector<Vec2>& loop) {
  double twice = 0;
  for (size_t i = 0; i < loop.size(); ++i) {
    const Vec2 a = loop[i] - loop[0], b = loop[(i + 1) % loop.size()] - loop[0];
    twice += a.x * b.y - a.y * b.x;
  }
  return twice / 2;
}

std::vector<double> heightsOf(const Solid& solid) {
  std::vector<double> heights;
  for (const auto& triangle : solid.triangles)
    for (const std::uint32_t i : triangle) heights.push_back(solid.points[i].z);
  std::sort(heights.begin(), heights.end());
  heights.erase(
      std::unique(heights.begin(), heights.end(), [](double a, double b) { return b - a < 1e-9; }),
      heights.end());
  return heights;
}

ClipperLib::Paths toPaths(const Loops& loops) {
  ClipperLib::Paths paths;
  for (const auto& loop : loops) {
    ClipperLib::Path path;
    for (const Vec2& p : loop)
      path.emplace_back(std::llround(p.x * kGrid), std::llround(p.y * kGrid));
    paths.push_back(std::move(path));
  }
  return paths;
}

double pathLength(const ClipperLib::Path& path) {
  double length = 0;
  for (size_t i = 0; i < path.size(); ++i) {
    const auto &a = path[i], &b = path[(i + 1) % path.size()];
    length += std::hypot(double(a.X - b.X), double(a.Y - b.Y));
  }
  return length;
}

// Of a slice of `a` at z and one of `b` at zb.
double commonArea(const Solid& a, double z, const Solid& b, double zb) {
  ClipperLib::Clipper clipper;
  clipper.AddPaths(toPaths(sliceLoops(a, z)), ClipperLib::ptSubject, true);
  clipper.AddPaths(toPaths(sliceLoops(b, zb)), ClipperLib::ptClip, true);
  ClipperLib::Paths common;
  clipper.Execute(ClipperLib::ctIntersection, common, ClipperLib::pftNonZero,
                  ClipperLib::pftNonZero);
  double sum = 0;
  for (const ClipperLib::Path& path : common) {
    const double area = ClipperLib::Area(path);
    if (2 * std::abs(area) > kTouch * kGrid * pathLength(path)) sum += area;
  }
  return std::max(0.0, sum) / (kGrid * kGrid);
}

struct Side {
  Vec3 outward;
  double reach;  // of the solid along it
};

double along(const Vec3& n, const Vec3& p) { return n.x * p.x + n.y * p.y + n.z * p.z; }

// The planes of a solid's triangles that have the whole solid behind them, at most a few.
std::vector<Side> outerSides(const Solid& solid) {
  constexpr size_t kMostSides = 32;
  std::vector<Side> sides;
  for (const auto& t : solid.triangles) {
    const Vec3 &a = solid.points[t[0]], u = solid.points[t[1]] - a, v = solid.points[t[2]] - a;
    Vec3 n{u.y * v.z - u.z * v.y, u.z * v.x - u.x * v.z, u.x * v.y - u.y * v.x};
    const double size = std::sqrt(along(n, n));
    if (size < 1e-12) continue;
    n /= size;
    const double reach = along(n, a);
    const bool known = std::any_of(sides.begin(), sides.end(), [&](const Side& side) {
      return along(side.outward, n) > 1 - 1e-12;
    });
    if (known || sides.size() == kMostSides) continue;
    if (std::all_of(solid.points.begin(), solid.points.end(),
                    [&](const Vec3& p) { return along(n, p) < reach + 1e-6; }))
      sides.push_back({n, reach});
  }
  return sides;
}

// The shells of a solid, each as a solid of its own: parts that share no point. One with a void in
// it (a shell turned inward) stays whole.
std::vector<Solid> shellsOf(const Solid& solid) {
  std::vector<std::uint32_t> root(solid.points.size());
  std::iota(root.begin(), root.end(), 0u);
  const auto find = [&](std::uint32_t i) {
    while (root[i] != i) i = root[i] = root[root[i]];
    return i;
  };
  for (const auto& [a, b, c] : solid.triangles) {
    root[find(b)] = find(a);
    root[find(c)] = find(a);
  }
  std::unordered_map<std::uint32_t, size_t> number;
  std::vector<Solid> shells;
  std::vector<std::uint32_t> place(solid.points.size(), ~0u);
  for (const auto& triangle : solid.triangles) {
    const auto [at, isNew] = number.insert({find(triangle[0]), shells.size()});
    if (isNew) shells.emplace_back();
    Solid& shell = shells[at->second];
    std::array<std::uint32_t, 3> own{};
    for (size_t k = 0; k < 3; ++k) {
      std::uint32_t& known = place[triangle[k]];
      if (known == ~0u) {
        known = static_cast<std::uint32_t>(shell.points.size());
        shell.points.push_back(solid.points[triangle[k]]);
      }
      own[k] = known;
    }
    shell.triangles.push_back(own);
  }
  if (std::any_of(shells.begin(), shells.end(), [](const Solid& s) { return volume(s) <= 0; }))
    return {solid};
  return shells;
}

// What is asked of a solid again and again.
struct Known {
  const Solid* solid;
  Bounds bounds;
  std::vector<double> heights;
  std::vector<Side> sides;
};

Known know(const Solid& solid) {
  return {&solid, bounds(solid), heightsOf(solid), outerSides(solid)};
}

// Is all of `b` in front of a plane that all of `a` lies behind? Then they cannot overlap.
bool inFrontOf(const Known& a, const Known& b) {
  return std::any_of(a.sides.begin(), a.sides.end(), [&](const Side& side) {
    return std::all_of(b.solid->points.begin(), b.solid->points.end(),
                       [&](const Vec3& p) { return along(side.outward, p) > side.reach - kTouch; });
  });
}

bool boundsOverlap(const Bounds& a, const Bounds& b) {
  for (int k = 0; k < 3; ++k)
    if (std::min(a.high[k], b.high[k]) - std::max(a.low[k], b.low[k]) < kTouch) return false;
  return true;
}

// Is the point inside, by the faces that an upright line crosses below it? Points over an edge of
// two triangles may be told wrong.
bool holds(const Solid& solid, const Vec3& p) {
  bool inside = false;
  const auto turn = [](const Vec3& u, const Vec3& v, const Vec3& w) {
    return (v.x - u.x) * (w.y - u.y) - (v.y - u.y) * (w.x - u.x);
  };
  for (const auto& t : solid.triangles) {
    const Vec3 &a = solid.points[t[0]], &b = solid.points[t[1]], &c = solid.points[t[2]];
    const double wa = turn(b, c, p), wb = turn(c, a, p), wc = turn(a, b, p);
    if (!((wa > 0 && wb > 0 && wc > 0) || (wa < 0 && wb < 0 && wc < 0))) continue;
    if ((wa * a.z + wb * b.z + wc * c.z) / (wa + wb + wc) < p.z) inside = !inside;
  }
  return inside;
}

// Does the skin of `a` stay out of a box, and does the box lie outside `a`? Then what is in the box
// cannot overlap it. Never says so wrongly: several points in the box must agree.
bool clearOf(const Known& a, Bounds box) {
  for (int k = 0; k < 3; ++k) {
    box.low[k] += kTouch;
    box.high[k] -= kTouch;
    if (box.low[k] >= box.high[k]) return false;
  }
  const Vec3 middle = (box.low + box.high) * 0.5, half = (box.high - box.low) * 0.5;
  for (const auto& t : a.solid->triangles) {
    const Vec3 &p = a.solid->points[t[0]], &q = a.solid->points[t[1]], &r = a.solid->points[t[2]];
    bool away = false;
    for (int k = 0; k < 3 && !away; ++k)
      away =
          std::min({p[k], q[k], r[k]}) > box.high[k] || std::max({p[k], q[k], r[k]}) < box.low[k];
    if (away) continue;
    const Vec3 u = q - p, v = r - p;
    const Vec3 n{u.y * v.z - u.z * v.y, u.z * v.x - u.x * v.z, u.x * v.y - u.y * v.x};
    const double reach = std::abs(n.x) * half.x + std::abs(n.y) * half.y + std::abs(n.z) * half.z;
    if (std::abs(along(n, middle - p)) <= reach) return false;
  }
  for (const Vec3& f :
       {Vec3{0.1234, 0.2857, 0.4321}, {-0.3719, 0.1173, -0.2311}, {0.417, -0.339, 0}})
    if (holds(*a.solid, middle + Vec3{f.x * half.x, f.y * half.y, f.z * half.z})) return false;
  return true;
}

// Heights inside the common range at which either has points, its ends included.
std::vector<double> commonHeights(const Known& a, const Known& b) {
  const double low = std::max(a.bounds.low.z, b.bounds.low.z);
  const double high = std::min(a.bounds.high.z, b.bounds.high.z);
  std::vector<double> heights{low, high};
  for (const auto* list : {&a.heights, &b.heights})
    for (const double z : *list)
      if (z > low && z < high) heights.push_back(z);
  std::sort(heights.begin(), heights.end());
  if (heights.size() <= kMostIntervals + 1) return heights;
  std::vector<double> fewer;
  for (size_t k = 0; k <= kMostIntervals; ++k)
    fewer.push_back(heights[k * (heights.size() - 1) / kMostIntervals]);
  return fewer;
}

// At one height, without what is gone when one of the two is moved up or down by a skin: on gentle
// slopes the thinnest lens is wide.
double commonArea(const Known& a, const Known& b, double z) {
  double least = commonArea(*a.solid, z, *b.solid, z);
  const auto without = [&](const Known& one, const Known& other) {
    for (const double moved : {z - kTouch, z + kTouch})
      if (least > 0 && moved > one.bounds.low.z && moved < one.bounds.high.z)
        least = std::min(least, commonArea(*one.solid, moved, *other.solid, z));
  };
  without(a, b);
  without(b, a);
  return least;
}

double overlapOf(const Known& a, const Known& b) {
  if (!boundsOverlap(a.bounds, b.bounds) || inFrontOf(a, b) || inFrontOf(b, a)) return 0;
  if (clearOf(a, b.bounds) || clearOf(b, a.bounds)) return 0;
  const std::vector<double> heights = commonHeights(a, b);
  double sum = 0;
  for (size_t k = 0; k + 1 < heights.size(); ++k) {
    const double thickness = heights[k + 1] - heights[k];
    if (thickness < 1e-6) continue;
    // Near both ends too: wedges are thickest there.
    for (const double f : {0.0137, 0.3391, 0.6633, 0.9871})
      sum += commonArea(a, b, heights[k] + f * thickness) * thickness / 4;
  }
  return sum;
}

}  // namespace

double sliceArea(const Solid& solid, double z) {
  double sum = 0;
  for (const auto& loop : sliceLoops(solid, z)) sum += loopArea(loop);
  return sum;
}

namespace {

double slicedVolumeOf(const Solid& solid) {
  const std::vector<double> heights = heightsOf(solid);
  // Gauss's two points: exact for areas that run as a square polynomial, and not at the ends.
  const double offset = 0.5 / std::sqrt(3.0);
  double sum = 0;
  for (size_t k = 0; k + 1 < heights.size(); ++k) {
    const double thickness = heights[k + 1] - heights[k];
    const double middle = (heights[k + 1] + heights[k]) / 2;
    sum += thickness / 2 *
           (sliceArea(solid, middle - offset * thickness) +
            sliceArea(solid, middle + offset * thickness));
  }
  return sum;
}

}  // namespace

double slicedVolume(const Solid& solid) {
  double sum = 0;
  for (const Solid& shell : shellsOf(solid)) sum += slicedVolumeOf(shell);
  return sum;
}

double overlap(const Solid& a, const Solid& b) { return overlapOf(know(a), know(b)); }

std::vector<Overlap> overlaps(const std::vector<const Solid*>& solids) {
  return overlaps(solids, [](size_t, size_t) { return true; });
}

std::vector<Overlap> overlaps(const std::vector<const Solid*>& solids,
                              const std::function<bool(size_t, size_t)>& asked) {
  // Shell by shell: most are plain bars and panels, that a plane or two tell apart.
  std::vector<Solid> shells;
  std::vector<size_t> owner;
  for (size_t i = 0; i < solids.size(); ++i) {
    if (!solids[i] || solids[i]->empty()) continue;
    for (Solid& shell : shellsOf(*solids[i])) {
      shells.push_back(std::move(shell));
      owner.push_back(i);
    }
  }
  std::vector<Known> known;
  for (const Solid& shell : shells) known.push_back(know(shell));
  std::vector<size_t> order(shells.size());
  std::iota(order.begin(), order.end(), size_t{0});
  std::sort(order.begin(), order.end(),
            [&](size_t a, size_t b) { return known[a].bounds.low.x < known[b].bounds.low.x; });
  std::map<std::pair<size_t, size_t>, double> found;
  for (size_t i = 0; i < order.size(); ++i)
    for (size_t j = i + 1; j < order.size(); ++j) {
      const Known &a = known[order[i]], &b = known[order[j]];
      if (b.bounds.low.x > a.bounds.high.x) break;
      const size_t p = owner[order[i]], q = owner[order[j]];
      if (p == q || !boundsOverlap(a.bounds, b.bounds) || !asked(p, q)) continue;
      const double common = overlapOf(a, b);
      if (common > 0) found[{std::min(p, q), std::max(p, q)}] += common;
    }
  std::vector<Overlap> list;
  for (const auto& [pair, common] : found) list.push_back({pair.first, pair.second, common});
  return list;
}

}  // namespace model::test
