#include "viewer/unit_picking.h"

#include <algorithm>
#include <bit>
#include <cmath>

#include <glm/geometric.hpp>

namespace viewer {

namespace {

constexpr double kTenth = 1e-4;  // metres
constexpr double kInside = 0.005;
constexpr double kJoint = 0.016;  // half a wide bed joint

float floatOf(std::uint32_t bits) { return std::bit_cast<float>(bits); }

// How far x lies outside from..to.
double outside(double x, double from, double to) { return std::max({from - x, x - to, 0.0}); }

// The unit nearest to the point; `away` is by how much it misses.
std::uint32_t nearestIn(const Scene& scene, const ElementRange& range, const glm::dvec3& p,
                        double time, double& away) {
  const glm::uvec4* leaf = &scene.leaves[range.leaf];
  const glm::dvec2 along(range.along);
  const glm::dvec2 inward = glm::dvec2(-along.y, along.x) * static_cast<double>(floatOf(leaf[2].z));
  const glm::dvec2 from = glm::dvec2(p) - glm::dvec2(range.wallStart);
  const double s = glm::dot(from, along) - static_cast<std::int32_t>(leaf[1].x) * kTenth;
  const double d = glm::dot(from, inward);
  const double z = p.z - static_cast<std::int32_t>(leaf[0].x) * kTenth;
  std::uint32_t best = 0xffffffffu;
  for (std::uint32_t i = range.firstUnit; i < range.firstUnit + range.unitCount; ++i) {
    const UnitInstance& unit = scene.units[i];
    if (static_cast<double>(unit.appears) > time) break;
    const double s0 = (unit.place & 0xfffffu) * kTenth;
    const double length = (unit.place >> 20 | unit.height >> 30 << 12) * kTenth;
    const double z0 = (unit.height & 0x3ffffu) * kTenth,
                 tall = (unit.height >> 18 & 0xfffu) * kTenth;
    const glm::uvec4& depth = leaf[4 + (unit.what >> kDepthShift & 7u)];
    const double misses = std::max(
        {outside(s, s0, s0 + length), outside(z, z0, z0 + tall),
         outside(d, static_cast<double>(floatOf(depth.x)), static_cast<double>(floatOf(depth.y)))});
    if (misses < away) away = misses, best = i;
  }
  return best;
}

}  // namespace

UnitHit unitAt(const Scene& scene, std::uint32_t element, const glm::vec3& point,
               const glm::vec3& normal, double time) {
  UnitHit hit;
  if (element >= scene.elements.size() || scene.elements[element].unitCount == 0) return hit;
  const ElementRange& range = scene.elements[element];
  const glm::dvec3 p = glm::dvec3(point) - glm::dvec3(normal) * kInside;
  double away = kJoint;
  const auto look = [&](std::uint32_t e) {
    const std::uint32_t unit = nearestIn(scene, scene.elements[e], p, time, away);
    if (unit != 0xffffffffu) hit = {e, unit};
  };
  look(element);
  for (std::uint32_t n = 0; away > 0 && n < range.neighbourCount; ++n)
    look(scene.neighbours[range.firstNeighbour + n]);
  return hit;
}

}  // namespace viewer
