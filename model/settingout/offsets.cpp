#include "model/settingout/offsets.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

namespace model {
namespace {

Vec2 nearestOn(const Vec2& a, const Vec2& b, const Vec2& p) {
  const Vec2 along = b - a;
  const double length2 = glm::dot(along, along);
  if (length2 <= 0) return a;
  return a + along * std::clamp(glm::dot(p - a, along) / length2, 0.0, 1.0);
}

void keepShorter(SiteOffset& best, const Vec2& from, const Vec2& at) {
  const double distance = glm::length(at - from);
  if (distance < best.distance) best = {best.to, from, at, distance};
}

bool crosses(const Vec2& a, const Vec2& b, const Vec2& c, const Vec2& d, Vec2& where) {
  const Vec2 r = b - a, s = d - c;
  const double denominator = cross(r, s);
  // Of edges in line the last digits would say anything; their ends tell the distance.
  if (std::abs(denominator) <= 1e-9 * glm::length(r) * glm::length(s)) return false;
  const double t = cross(c - a, s) / denominator, u = cross(c - a, r) / denominator;
  where = a + r * t;
  return t >= 0 && t <= 1 && u >= 0 && u <= 1;
}

// Between two edges: at a crossing nothing, otherwise the shortest line ends at a corner of one.
void compare(SiteOffset& best, const Vec2& a, const Vec2& b, const Vec2& c, const Vec2& d) {
  Vec2 where{0, 0};
  if (crosses(a, b, c, d, where)) keepShorter(best, where, where);
  keepShorter(best, a, nearestOn(c, d, a));
  keepShorter(best, b, nearestOn(c, d, b));
  keepShorter(best, nearestOn(a, b, c), c);
  keepShorter(best, nearestOn(a, b, d), d);
}

}  // namespace

SiteOffset shortestBetween(const Polygon& a, const Polygon& b) {
  SiteOffset best;
  best.distance = 1e300;
  for (size_t i = 0; i < a.size(); ++i)
    for (size_t j = 0; j < b.size(); ++j)
      compare(best, a[i], a[(i + 1) % a.size()], b[j], b[(j + 1) % b.size()]);
  return best;
}

std::vector<SiteOffset> deriveOffsets(const Job& job, const SettingOut& settingOut) {
  std::vector<SiteOffset> offsets;
  const Outline& boundary = job.site.boundary;
  const Polygon face = settingOut.ring(settingOut.faceDistances.finishedFace);
  for (size_t i = 0; i < boundary.size(); ++i) {
    // A side alone: a "polygon" of its two ends.
    offsets.push_back(shortestBetween(face, {boundary[i], boundary[(i + 1) % boundary.size()]}));
    offsets.back().to = "boundary " + std::to_string(i + 1);
  }
  for (const StandingBuilding& building : job.site.buildings) {
    if (building.kind == BuildingKind::Demolish || building.outline.empty()) continue;
    offsets.push_back(shortestBetween(face, building.outline));
    offsets.back().to = building.name;
  }
  return offsets;
}

}  // namespace model
