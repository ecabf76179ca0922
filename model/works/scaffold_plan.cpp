#include "model/works/scaffold_plan.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <glm/geometric.hpp>

#include "model/works/wall_layer.h"

namespace model {

namespace {

// Reach and lift heights: common practice, no source.
constexpr double kFromGround = 1.200;
constexpr double kReach = 1.000;
constexpr double kUnderWork = 0.150;  // boards under the bed that is laid first from them
constexpr double kClearOfFace = 0.300;
constexpr double kClearOfEaves = 0.150;
constexpr double kOutside = 0.150;  // room outside the outer row
constexpr double kShortest = 0.600;

Bounds boundsOf(const Polygon& polygon) {
  Bounds b;
  for (const Vec2& p : polygon) b.add({p, 0});
  return b;
}

bool apart(const Bounds& a, const Bounds& b) {
  return a.high.x < b.low.x || b.high.x < a.low.x || a.high.y < b.low.y || b.high.y < a.low.y;
}

bool overlap(const Polygon& a, const Polygon& b) {
  return !apart(boundsOf(a), boundsOf(b)) && area(intersect({{a, {}}}, {{b, {}}})) > 1e-4;
}

Polygon anticlockwise(Polygon polygon) {
  if (signedArea(polygon) < 0) std::reverse(polygon.begin(), polygon.end());
  return polygon;
}

}  // namespace

ScaffoldRows scaffoldRows(const Job& job) {
  ScaffoldRows rows;
  const double overhang = std::max(job.roof.eaves, job.roof.verge);
  rows.inner = std::max(kClearOfFace, overhang + kClearOfEaves) + kTube / 2;
  rows.outer =
      rows.inner + kTube + 2 * kBoardGap + kBoards * kBoardWidth + (kBoards - 1) * kBoardGap;
  return rows;
}

std::vector<Platform> platforms(const Job& job, const SettingOut& settingOut) {
  std::vector<Platform> all;
  const double pitchCos = std::cos(job.roof.pitch * std::numbers::pi / 180);
  const double thickness = (job.roof.rafterDepth + job.roof.covering) / pitchCos;
  const double underEaves = settingOut.levels.eaves - thickness;
  for (const Lift& lift : settingOut.lifts) {
    if (lift.bottom - settingOut.levels.groundLow <= kFromGround) continue;
    const double level = lift.bottom - kUnderWork;
    if (!all.empty() && level - all.back().level < kReach) continue;
    Platform platform;
    platform.lift = lift;
    platform.level = level;
    platform.first = all.empty();
    platform.previous = all.empty() ? 0 : all.back().level;
    platform.insideBoards = level < underEaves - 0.050;
    all.push_back(platform);
  }
  return all;
}

Polygon scaffoldBand(const SettingOut& settingOut, size_t wall, const ScaffoldRows& rows) {
  const WallLayer layer = layerOf(settingOut, wall, -(rows.outer + kOutside), -1e-3);
  if (layer.to - layer.from < kShortest) return {};
  const WallLine& line = settingOut.walls[wall];
  return {line.at(layer.startFront, layer.outer), line.at(layer.endFront, layer.outer),
          line.at(layer.endBack, layer.inner), line.at(layer.startBack, layer.inner)};
}

bool hasRoom(const Job& job, const SettingOut& settingOut, const Polygon& area,
             const std::vector<Polygon>& others) {
  if (area.empty() || overlap(area, settingOut.outline)) return false;
  for (const Polygon& other : others) {
    if (overlap(area, other)) return false;
  }
  for (const StandingBuilding& building : job.site.buildings) {
    if (building.kind == BuildingKind::Demolish) continue;
    if (overlap(area, anticlockwise(building.outline))) return false;
  }
  return model::area(subtract({{area, {}}}, {{settingOut.terrain.boundary, {}}})) < 1e-4;
}

std::vector<bool> wallsWithRoom(const Job& job, const SettingOut& settingOut,
                                const ScaffoldRows& rows) {
  std::vector<bool> room;
  std::vector<Polygon> taken;
  for (size_t i = 0; i < settingOut.walls.size(); ++i) {
    const Polygon band = scaffoldBand(settingOut, i, rows);
    room.push_back(hasRoom(job, settingOut, band, taken));
    if (room.back()) taken.push_back(band);
  }
  return room;
}

}  // namespace model
