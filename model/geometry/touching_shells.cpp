#include "model/geometry/touching_shells.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

#include <glm/geometric.hpp>

namespace model {

namespace {

using Index = std::uint32_t;

struct Side {
  Index low, high;
  Index triangle, k;  // from corner k to k + 1
  bool rising;        // runs from low to high
  double angle = 0;
};

class Forest {
 public:
  explicit Forest(size_t n) : parent_(n) { std::iota(parent_.begin(), parent_.end(), Index{0}); }
  Index of(Index i) {
    while (parent_[i] != i) i = parent_[i] = parent_[parent_[i]];
    return i;
  }
  void join(Index a, Index b) { parent_[std::max(of(a), of(b))] = std::min(of(a), of(b)); }

 private:
  std::vector<Index> parent_;
};

// Almost every solid has no such edge: look before doing any work.
bool anyTouching(const Solid& solid) {
  std::vector<std::uint64_t> edges;
  edges.reserve(solid.triangles.size() * 3);
  for (const auto& t : solid.triangles) {
    for (size_t k = 0; k < 3; ++k) {
      // Each edge of a closed shell runs once from low to high.
      const Index a = t[k], b = t[(k + 1) % 3];
      if (a < b) edges.push_back(std::uint64_t{a} << 32 | b);
    }
  }
  std::sort(edges.begin(), edges.end());
  return std::adjacent_find(edges.begin(), edges.end()) != edges.end();
}

std::vector<Side> sidesOf(const Solid& solid) {
  std::vector<Side> sides;
  sides.reserve(solid.triangles.size() * 3);
  for (Index t = 0; t < solid.triangles.size(); ++t) {
    for (Index k = 0; k < 3; ++k) {
      const Index a = solid.triangles[t][k], b = solid.triangles[t][(k + 1) % 3];
      sides.push_back({std::min(a, b), std::max(a, b), t, k, a < b, 0});
    }
  }
  std::sort(sides.begin(), sides.end(), [](const Side& p, const Side& q) {
    if (p.low != q.low) return p.low < q.low;
    if (p.high != q.high) return p.high < q.high;
    return p.triangle < q.triangle;
  });
  return sides;
}

// Sorts the sides of one edge round it, anticlockwise looking from high to low, starting with one
// that has its body on its anticlockwise side: then neighbours 0 1, 2 3 ... bound one body each.
void sortRound(const Solid& solid, Side* first, Side* last) {
  const Vec3 a = solid.points[first->low], b = solid.points[first->high];
  const Vec3 axis = glm::normalize(b - a);
  const Vec3 far = std::abs(axis.z) < 0.9 ? Vec3{0, 0, 1} : Vec3{1, 0, 0};
  const Vec3 x = glm::normalize(glm::cross(far, axis)), y = glm::cross(axis, x);
  for (Side* s = first; s != last; ++s) {
    const Vec3 c = solid.points[solid.triangles[s->triangle][(s->k + 2) % 3]] - a;
    s->angle = std::atan2(glm::dot(c, y), glm::dot(c, x));
  }
  // A rising side's outward normal is axis x inward direction: anticlockwise. Its body is on the
  // clockwise side.
  std::sort(first, last, [](const Side& p, const Side& q) {
    if (p.angle != q.angle) return p.angle < q.angle;
    return p.rising > q.rising;
  });
  if (first->rising) std::rotate(first, first + 1, last);
}

// The first group of corners keeps a point; every other group gets a copy.
void copyPoints(Solid& solid, Forest& corners) {
  constexpr Index kNone = 0xffffffffu;
  std::vector<Index> pointOf(solid.triangles.size() * 3, kNone);
  std::vector<bool> taken(solid.points.size(), false);
  for (Index c = 0; c < pointOf.size(); ++c) {
    const Index root = corners.of(c), point = solid.triangles[c / 3][c % 3];
    if (pointOf[root] != kNone) continue;
    pointOf[root] = point;
    if (taken[point]) {
      pointOf[root] = static_cast<Index>(solid.points.size());
      solid.points.push_back(Vec3(solid.points[point]));
      taken.push_back(true);
    }
    taken[pointOf[root]] = true;
  }
  for (Index c = 0; c < pointOf.size(); ++c) {
    solid.triangles[c / 3][c % 3] = pointOf[corners.of(c)];
  }
}

// Puts point m on the side from a to b of triangle t, or of the piece of t that now has the side.
void splitSide(Solid& solid, std::map<Index, std::vector<Index>>& pieces, Index t, Index a, Index b,
               Index m) {
  auto& list = pieces[t];
  if (list.empty()) list.push_back(t);
  for (const Index piece : list) {
    const auto triangle = solid.triangles[piece];
    for (size_t k = 0; k < 3; ++k) {
      if (triangle[k] != a || triangle[(k + 1) % 3] != b) continue;
      const Index c = triangle[(k + 2) % 3];
      solid.triangles[piece] = {a, m, c};
      list.push_back(static_cast<Index>(solid.triangles.size()));
      solid.triangles.push_back({m, b, c});
      return;
    }
  }
}

// Pairs that still share both points (a body that touches itself) get a point between them.
void partPairs(Solid& solid, const std::vector<Side>& sides) {
  std::map<Index, std::vector<Index>> pieces;
  const std::vector<std::array<Index, 3>> whole = solid.triangles;
  for (size_t i = 0, end = 0; i < sides.size(); i = end) {
    while (end < sides.size() && sides[end].low == sides[i].low && sides[end].high == sides[i].high)
      ++end;
    if (end - i <= 2) continue;
    for (size_t k = i + 2; k + 1 < end; k += 2) {
      const auto& t = whole[sides[k].triangle];
      const Index a = t[sides[k].k], b = t[(sides[k].k + 1) % 3];
      const double part = static_cast<double>(k - i) / static_cast<double>(end - i);
      const auto m = static_cast<Index>(solid.points.size());
      solid.points.push_back(solid.points[a] + (solid.points[b] - solid.points[a]) * part);
      splitSide(solid, pieces, sides[k].triangle, a, b, m);
      splitSide(solid, pieces, sides[k + 1].triangle, b, a, m);
    }
  }
}

}  // namespace

void separateTouchingShells(Solid& solid) {
  if (!anyTouching(solid)) return;
  std::vector<Side> sides = sidesOf(solid);
  const auto edgeEnd = [&](size_t i) {
    size_t j = i;
    while (j < sides.size() && sides[j].low == sides[i].low && sides[j].high == sides[i].high) ++j;
    return j;
  };
  Forest corners(solid.triangles.size() * 3);
  const auto cornerAt = [&](const Side& s, Index point) {
    const auto& t = solid.triangles[s.triangle];
    return s.triangle * 3 + (t[0] == point ? 0u : t[1] == point ? 1u : 2u);
  };
  for (size_t i = 0; i < sides.size();) {
    const size_t end = edgeEnd(i);
    if (end - i > 2) sortRound(solid, sides.data() + i, sides.data() + end);
    for (size_t k = i; k + 1 < end; k += 2) {
      for (const Index p : {sides[k].low, sides[k].high}) {
        corners.join(cornerAt(sides[k], p), cornerAt(sides[k + 1], p));
      }
    }
    i = end;
  }
  copyPoints(solid, corners);
  partPairs(solid, sides);
}

}  // namespace model
