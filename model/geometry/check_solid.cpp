#include "model/geometry/check_solid.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <tuple>

#include "model/geometry/vector_math.h"

namespace model {
namespace {

using Index = std::uint32_t;

std::string at(const Vec3& p) {
  return "(" + std::to_string(p.x) + ", " + std::to_string(p.y) + ", " + std::to_string(p.z) + ")";
}

// For each point, the first of those with the same coordinates.
std::vector<Index> mergedPoints(const Solid& solid) {
  std::vector<Index> order(solid.points.size()), merged(solid.points.size());
  std::iota(order.begin(), order.end(), Index{0});
  const auto key = [&](Index i) {
    const Vec3& p = solid.points[i];
    return std::tuple{p.x, p.y, p.z, i};
  };
  std::sort(order.begin(), order.end(), [&](Index a, Index b) { return key(a) < key(b); });
  for (size_t k = 0; k < order.size(); ++k) {
    const bool same = k > 0 && solid.points[order[k]] == solid.points[order[k - 1]];
    merged[order[k]] = same ? merged[order[k - 1]] : order[k];
  }
  return merged;
}

// One side of a triangle. `low` < `high` are merged points; `from`, `to` the triangle's own.
struct Side {
  Index low, high, from, to;
  bool rising;  // runs from low to high
  Index triangle;
};

std::vector<Side> sidesOf(const Solid& solid, const std::vector<Index>& merged) {
  std::vector<Side> sides;
  sides.reserve(solid.triangles.size() * 3);
  for (size_t t = 0; t < solid.triangles.size(); ++t)
    for (size_t k = 0; k < 3; ++k) {
      const Index from = solid.triangles[t][k], to = solid.triangles[t][(k + 1) % 3];
      const Index a = merged[from], b = merged[to];
      sides.push_back({std::min(a, b), std::max(a, b), from, to, a < b, Index(t)});
    }
  std::sort(sides.begin(), sides.end(), [](const Side& p, const Side& q) {
    return std::tuple{p.low,    p.high,    std::min(p.from, p.to), std::max(p.from, p.to),
                      p.rising, p.triangle} <
           std::tuple{q.low,    q.high,    std::min(q.from, q.to), std::max(q.from, q.to),
                      q.rising, q.triangle};
  });
  return sides;
}

// Triangles joined over shared sides: a union-find forest.
class Shells {
 public:
  explicit Shells(size_t triangles) : parent_(triangles) {
    std::iota(parent_.begin(), parent_.end(), Index{0});
  }
  Index of(Index t) {
    while (parent_[t] != t) t = parent_[t] = parent_[parent_[t]];
    return t;
  }
  void join(Index a, Index b) { parent_[std::max(of(a), of(b))] = std::min(of(a), of(b)); }

 private:
  std::vector<Index> parent_;
};

bool samePoints(const Side& p, const Side& q) {
  return std::min(p.from, p.to) == std::min(q.from, q.to) &&
         std::max(p.from, p.to) == std::max(q.from, q.to);
}

// Pairs the sides along one edge: `first` to `last` have the same two places. Two sides always
// pair. More meet where shells touch along an edge; then each pair must have its own points.
std::string pairSides(const Solid& solid, const std::vector<Side>& sides, size_t first, size_t last,
                      Shells& shells) {
  // Written only when there is a fault to tell.
  const auto where = [&] {
    return at(solid.points[sides[first].low]) + " to " + at(solid.points[sides[first].high]);
  };
  if ((last - first) % 2 != 0)
    return (last - first == 1 ? "open along " : "an odd number of faces meet along ") + where();
  const bool touching = last - first > 2;
  for (size_t k = first; k < last; k += 2) {
    const Side &p = sides[k], &q = sides[k + 1];
    const bool third = k + 2 < last && samePoints(p, sides[k + 2]);
    if (touching && (!samePoints(p, q) || third))
      return "more than two faces meet along " + where();
    if (p.rising == q.rising) return "faces that meet along " + where() + " look opposite ways";
    shells.join(p.triangle, q.triangle);
  }
  return {};
}

std::string pointFault(const Solid& solid) {
  for (const auto& triangle : solid.triangles)
    for (const Index i : triangle) {
      if (i >= solid.points.size()) return "a triangle uses a point that does not exist";
      const Vec3& p = solid.points[i];
      if (!std::isfinite(p.x) || !std::isfinite(p.y) || !std::isfinite(p.z))
        return "a coordinate is not a finite number";
    }
  return {};
}

std::string edgeFault(const Solid& solid, Shells& shells) {
  const std::vector<Side> sides = sidesOf(solid, mergedPoints(solid));
  for (size_t first = 0; first < sides.size();) {
    size_t last = first;
    while (last < sides.size() && sides[last].low == sides[first].low &&
           sides[last].high == sides[first].high)
      ++last;
    if (sides[first].low == sides[first].high)
      return "a triangle has two corners in one place, " + at(solid.points[sides[first].low]);
    std::string fault = pairSides(solid, sides, first, last, shells);
    if (!fault.empty()) return fault;
    first = last;
  }
  return {};
}

std::string shellFault(const Solid& solid, Shells& shells) {
  std::vector<double> six(solid.triangles.size(), 0.0);
  for (size_t t = 0; t < solid.triangles.size(); ++t) {
    const Index shell = shells.of(Index(t));
    const Vec3& origin = solid.points[solid.triangles[shell][0]];
    const auto& [a, b, c] = solid.triangles[t];
    six[shell] +=
        dot(solid.points[a] - origin, cross(solid.points[b] - origin, solid.points[c] - origin));
  }
  for (size_t t = 0; t < six.size(); ++t)
    if (shells.of(Index(t)) == t && six[t] <= 0)
      return "a shell faces inward or has no volume, at " + at(solid.points[solid.triangles[t][0]]);
  return {};
}

}  // namespace

std::string solidFault(const Solid& solid) {
  if (solid.empty()) return "there is nothing in it";
  std::string fault = pointFault(solid);
  if (!fault.empty()) return fault;
  Shells shells(solid.triangles.size());
  fault = edgeFault(solid, shells);
  return fault.empty() ? shellFault(solid, shells) : fault;
}

}  // namespace model
