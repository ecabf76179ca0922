#include "model/works/cellar_dig.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <glm/geometric.hpp>

#include "model/job/dig_room.h"

namespace model {

namespace {

constexpr double kBench = 0.6;  // most that is dug from one standing; common practice, no source

double highestGround(const SettingOut& out) {
  double high = out.levels.groundHigh;
  for (const Vec3& p : out.terrain.points) high = std::max(high, p.z);
  return high;
}

// The part of the dig's side that belongs to edge i of the bottom, out to `reach`: to the corner's
// bisector at an outward corner, square off the edge at an inward one. Together they are what
// grown() covers.
BatterSide sideOver(const Polygon& bottom, size_t i, double reach, double rise, double level) {
  const size_t n = bottom.size();
  const Vec2 a = bottom[i], b = bottom[(i + 1) % n];
  const Vec2 along = glm::normalize(b - a), out{along.y, -along.x};
  const auto overrun = [&](const Vec2& before, const Vec2& at, const Vec2& next) {
    const Vec2 u = glm::normalize(at - before), v = glm::normalize(next - at);
    const double turn = std::atan2(cross(u, v), glm::dot(u, v));
    return turn > 0 ? std::tan(turn / 2) * reach : 0.0;
  };
  BatterSide side;
  const double atA = overrun(bottom[(i + n - 1) % n], a, b);
  const double atB = overrun(a, b, bottom[(i + 2) % n]);
  side.area = {b, a, a + out * reach - along * atA, b + out * reach + along * atB};
  side.surface = {out * rise, level - glm::dot(out, a) * rise};
  return side;
}

void findBenches(const SettingOut& out, const Job& job, CellarDig& dig) {
  double high = -1e300;
  for (const Region& region : dig.bottom) {
    for (const Vec2& p : region.outer) high = std::max(high, out.terrain.levelAt(p));
  }
  const double bottom = out.levels.cellarFormation;
  const double depth = high - job.ground.topsoil - bottom;
  const int count = std::max(1, static_cast<int>(std::ceil(depth / kBench - 1e-9)));
  for (int i = count - 1; i >= 0; --i) dig.benches.push_back(bottom + depth * i / count);
  dig.benches.back() = bottom;
}

}  // namespace

CellarDig deriveCellarDig(const Job& job, const SettingOut& settingOut) {
  CellarDig dig;
  dig.margin = roomRoundCellar(job);
  dig.bottom = grown(settingOut.cellarOutline, dig.margin);
  findBenches(settingOut, job, dig);
  const double level = settingOut.levels.cellarFormation;
  const double depth = highestGround(settingOut) - level;
  if (job.ground.batter >= kUprightBatter || depth <= 0) return dig;
  const double rise = std::tan(job.ground.batter * std::numbers::pi / 180);
  dig.reach = depth / rise;
  for (const Region& region : dig.bottom) {
    for (size_t i = 0; i < region.outer.size(); ++i) {
      dig.sides.push_back(sideOver(region.outer, i, dig.reach, rise, level));
    }
  }
  return dig;
}

}  // namespace model
