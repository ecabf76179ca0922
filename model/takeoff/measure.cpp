#include "model/takeoff/measure.h"

#include <algorithm>
#include <numeric>

#include <glm/geometric.hpp>

namespace model {
namespace {

size_t rootOf(std::vector<size_t>& parent, size_t i) {
  while (parent[i] != i) i = parent[i] = parent[parent[i]];
  return i;
}

}  // namespace

size_t pieceCount(const Solid& solid) {
  std::vector<size_t> parent(solid.points.size());
  std::iota(parent.begin(), parent.end(), size_t{0});
  for (const auto& [a, b, c] : solid.triangles) {
    parent[rootOf(parent, a)] = rootOf(parent, b);
    parent[rootOf(parent, b)] = rootOf(parent, c);
  }
  std::vector<bool> used(solid.points.size(), false);
  for (const auto& triangle : solid.triangles) used[rootOf(parent, triangle[0])] = true;
  return static_cast<size_t>(std::count(used.begin(), used.end(), true));
}

double extentAlong(const Solid& solid, const Vec3& direction) {
  if (solid.points.empty()) return 0;
  double low = 1e300, high = -1e300;
  for (const Vec3& p : solid.points) {
    low = std::min(low, glm::dot(p, direction));
    high = std::max(high, glm::dot(p, direction));
  }
  return high - low;
}

Vec3 middleOf(const Solid& solid) {
  const Bounds b = bounds(solid);
  return b.empty() ? Vec3(0, 0, 0) : (b.low + b.high) / 2.0;
}

}  // namespace model
