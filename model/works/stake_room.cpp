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

StakeRoom::Taken StakeRoom::boxed(Polygon outline) {
  Taken taken{std::move(outline), Vec2(1e300), Vec2(-1e300)};
  for (const Vec2& p : taken.outline) {
    taken.low = glm::min(taken.low, p);
    taken.high = glm::max(taken.high, p);
  }
  return taken;
}

bool StakeRoom::Taken::mayMeet(const Taken& other) const {
  constexpr double kNear = 1e-6;  // metres: what only touches is left to the outlines
  return low.x <= other.high.x + kNear && other.low.x <= high.x + kNear &&
         low.y <= other.high.y + kNear && other.low.y <= high.y + kNear;
}

StakeRoom::StakeRoom(const Job& job, const SettingOut& settingOut)
    : site_{{settingOut.terrain.boundary, {}}} {
  for (Region& r : digGrown(job, settingOut, kLeastClear))
    dig_.push_back(boxed(std::move(r.outer)));
  for (Region& r : digGrown(job, settingOut, std::max(kLeastClear, job.settingOut.boardClear)))
    clearOfDig_.push_back(boxed(std::move(r.outer)));
  for (const StandingBuilding& building : job.site.buildings) {
    if (building.kind != BuildingKind::Demolish)
      buildings_.push_back(boxed(anticlockwise(building.outline)));
  }
}

bool StakeRoom::meets(const std::vector<Taken>& places, const Polygon& figure) {
  const Taken box = boxed(figure);
  return std::any_of(places.begin(), places.end(), [&](const Taken& place) {
    if (!place.mayMeet(box)) return false;
    const auto in = [](const Polygon& polygon) {
      return [&](const Vec2& p) { return contains(polygon, p); };
    };
    if (std::any_of(figure.begin(), figure.end(), in(place.outline)) ||
        std::any_of(place.outline.begin(), place.outline.end(), in(figure)))
      return true;
    for (size_t i = 0; i < figure.size(); ++i) {
      if (crosses(place.outline, figure[i], figure[(i + 1) % figure.size()])) return true;
    }
    return false;
  });
}

bool StakeRoom::canStand(const Polygon& figure) const {
  const Taken box = boxed(figure);
  return holds(site_, figure) && !meets(buildings_, figure) &&
         std::none_of(taken_.begin(), taken_.end(), [&](const Taken& other) {
           return other.mayMeet(box) && overlapping(figure, other.outline);
         });
}

bool StakeRoom::isOpen(const Vec2& p) const {
  const Taken at{{}, p, p};
  return contains(site_.front().outer, p) &&
         std::none_of(buildings_.begin(), buildings_.end(), [&](const Taken& building) {
           return building.mayMeet(at) && contains(building.outline, p);
         });
}

bool StakeRoom::isOpen(const Vec2& a, const Vec2& b) const {
  return isOpen(a) && isOpen(b) && isOpen((a + b) / 2.0) && !crosses(site_.front().outer, a, b) &&
         std::none_of(buildings_.begin(), buildings_.end(),
                      [&](const Taken& building) { return crosses(building.outline, a, b); });
}

void StakeRoom::take(const Polygon& figure) {
  Vec2 centre{0, 0};
  for (const Vec2& p : figure) centre += p / static_cast<double>(figure.size());
  Polygon taken;
  for (const Vec2& p : figure) taken.push_back(p + glm::normalize(p - centre) * kBetween);
  taken_.push_back(boxed(std::move(taken)));
}

}  // namespace model
