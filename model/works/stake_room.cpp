#include "model/works/stake_room.h"

#include <algorithm>

#include <glm/geometric.hpp>

#include "model/works/cellar_dig.h"

namespace model {

namespace {

// Common practice, no source: nothing nearer to the edge of a dig, or to the next stake.
constexpr double kLeastClear = 0.150, kBetween = 0.050;

Polygon anticlockwise(Polygon polygon) {
  if (signedArea(polygon) < 0) std::reverse(polygon.begin(), polygon.end());
  return polygon;
}

Regions digGrown(const Job& job, const SettingOut& out, double clear) {
  Regions dug = grown(out.outline, clear - out.faceDistances.outermost());
  if (job.cellar) {
    const CellarDig dig = deriveCellarDig(job, out);
    dug = unite(dug, grown(out.cellarOutline, dig.margin + dig.reach + clear));
  }
  return dug;
}

bool crosses(const Polygon& outline, const Vec2& a, const Vec2& b) {
  for (size_t j = 0; j < outline.size(); ++j) {
    const Vec2 c = outline[j], d = outline[(j + 1) % outline.size()];
    if (cross(b - a, c - a) * cross(b - a, d - a) < 0 &&
        cross(d - c, a - c) * cross(d - c, b - c) < 0)
      return true;
  }
  return false;
}

}  // namespace

StakeRoom::StakeRoom(const Job& job, const SettingOut& settingOut)
    : site_(settingOut.terrain.boundary),
      dig_(digGrown(job, settingOut, kLeastClear)),
      clearOfDig_(digGrown(job, settingOut, std::max(kLeastClear, job.settingOut.boardClear))) {
  for (const StandingBuilding& building : job.site.buildings) {
    if (building.kind != BuildingKind::Demolish)
      buildings_.push_back({anticlockwise(building.outline), {}});
  }
}

bool StakeRoom::meets(const Regions& regions, const Polygon& figure) {
  return std::any_of(regions.begin(), regions.end(), [&](const Region& r) {
    const auto in = [](const Polygon& polygon) {
      return [&](const Vec2& p) { return contains(polygon, p); };
    };
    if (std::any_of(figure.begin(), figure.end(), in(r.outer)) ||
        std::any_of(r.outer.begin(), r.outer.end(), in(figure)))
      return true;
    for (size_t i = 0; i < figure.size(); ++i) {
      if (crosses(r.outer, figure[i], figure[(i + 1) % figure.size()])) return true;
    }
    return false;
  });
}

bool StakeRoom::canStand(const Polygon& figure) const {
  return holds({{site_, {}}}, figure) && !meets(buildings_, figure) &&
         std::none_of(taken_.begin(), taken_.end(),
                      [&](const Polygon& other) { return overlapping(figure, other); });
}

bool StakeRoom::isOpen(const Vec2& p) const {
  return contains(site_, p) && std::none_of(buildings_.begin(), buildings_.end(),
                                            [&](const Region& r) { return contains(r.outer, p); });
}

bool StakeRoom::isOpen(const Vec2& a, const Vec2& b) const {
  return isOpen(a) && isOpen(b) && isOpen((a + b) / 2.0) && !crosses(site_, a, b) &&
         std::none_of(buildings_.begin(), buildings_.end(),
                      [&](const Region& r) { return crosses(r.outer, a, b); });
}

void StakeRoom::take(const Polygon& figure) {
  Vec2 centre{0, 0};
  for (const Vec2& p : figure) centre += p / static_cast<double>(figure.size());
  Polygon taken;
  for (const Vec2& p : figure) taken.push_back(p + glm::normalize(p - centre) * kBetween);
  taken_.push_back(std::move(taken));
}

}  // namespace model
