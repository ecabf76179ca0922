#include "model/works/scaffold_plan.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <glm/geometric.hpp>

#include "model/settingout/gable_edges.h"
#include "model/walls/gable_profile.h"
#include "model/walls/wall_layer.h"
#include "model/walls/wall_names.h"
#include "model/works/coping_stones.h"

namespace model {

namespace {

// Reach and lift heights: common practice, no source.
constexpr double kFromGround = 1.200;
constexpr double kReach = 1.000;
constexpr double kUnderWork = 0.150;  // boards under the bed that is laid first from them
constexpr double kClearOfFace = 0.300;
constexpr double kClearOfEaves = 0.150;
constexpr double kLeastStep = 0.300;
constexpr double kGableStep = 1.350;
constexpr double kUnderEaves = 0.100;    // the roof's boards under the rafters' feet
constexpr double kNearEaves = 0.600;     // nearer than this the last platform serves the roof
constexpr double kClearOfVerge = 0.060;  // of inside boards, barge boards taken in
constexpr double kNoInside = 1e9;

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

// Level of the rafters' underside at the edge of the roof.
double underEaves(const Job& job, const SettingOut& settingOut) {
  const double pitchCos = std::cos(job.roof.pitch * std::numbers::pi / 180);
  return settingOut.levels.eaves - (job.roof.rafterDepth + job.roof.covering) / pitchCos;
}

void follow(std::vector<Platform>& all, Platform platform) {
  platform.first = all.empty();
  platform.previous = all.empty() ? 0 : all.back().level;
  all.push_back(std::move(platform));
}

void addRoofPlatform(const Job& job, const SettingOut& settingOut, std::vector<Platform>& all) {
  const double wanted = underEaves(job, settingOut) - kUnderEaves;
  if (settingOut.lifts.empty()) return;
  if (all.empty() && wanted - settingOut.levels.groundLow <= kFromGround) return;
  Platform roof;
  roof.stage = {StageKind::ScaffoldRoof};
  roof.id = "roof";
  roof.purpose = "the roof";
  roof.lift = settingOut.lifts.back();
  roof.level = wanted;
  roof.insideFrom += job.walls.render;
  if (!all.empty() && all.back().level >= wanted - kNearEaves) {
    roof.level = all.back().level;
    roof.boards = false;
  }
  // The upper rails guard the edge that the roofers work at.
  roof.guardTo = std::max(kGuardHeight, settingOut.levels.eaves + kGuardHeight - roof.level);
  follow(all, std::move(roof));
}

}  // namespace

ScaffoldRows scaffoldRows(const Job& job) {
  ScaffoldRows rows;
  const double overhang = std::max(job.roof.eaves, job.roof.verge);
  rows.inner = std::max(kClearOfFace + job.walls.render, overhang + kClearOfEaves) + kTube / 2;
  rows.outer =
      rows.inner + kTube + 2 * kBoardGap + kBoards * kBoardWidth + (kBoards - 1) * kBoardGap;
  return rows;
}

std::vector<Platform> platforms(const Job& job, const SettingOut& settingOut) {
  std::vector<Platform> all;
  const Levels& levels = settingOut.levels;
  for (const Lift& lift : settingOut.lifts) {
    if (lift.bottom - levels.groundLow <= kFromGround) continue;
    const double level = lift.bottom - kUnderWork;
    if (!all.empty()) {
      const double step = level - all.back().level;
      const bool outOfReach = lift.top - all.back().level > kMostReach;
      if (step < (outOfReach ? kLeastStep : kReach)) continue;
    }
    Platform platform;
    platform.stage = {StageKind::ScaffoldLift, lift.storey, lift.number};
    platform.id = liftId(job, lift);
    platform.purpose = liftName(job, lift);
    platform.lift = lift;
    platform.level = level;
    platform.insideFrom += job.walls.render;
    if (level >= underEaves(job, settingOut) - 0.050) platform.insideFrom = kNoInside;
    follow(all, platform);
  }
  addRoofPlatform(job, settingOut, all);
  return all;
}

std::vector<Platform> gablePlatforms(const Job& job, const SettingOut& settingOut, size_t wall,
                                     double base) {
  std::vector<Platform> all;
  const double inner = settingOut.faceDistances.innerFace;
  double apex = base;
  for (const double to : {job.walls.outerLeaf, inner}) {
    const WallLayer layer = layerOf(settingOut, wall, 0, to);
    for (const FacePair& pair : gableLineOn(job, settingOut, layer)) {
      apex = std::max({apex, pair.front.y, pair.back.y});
    }
  }
  for (double level = base; apex - level > kMostReach;) {
    Platform platform;
    level += kGableStep;
    const std::string number = std::to_string(all.size() + 1);
    platform.stage = {StageKind::ScaffoldRoof};
    platform.id = "gable " + number;
    platform.purpose = "the gable, lift " + number;
    platform.lift = settingOut.lifts.back();
    platform.level = level;
    platform.previous = level - kGableStep;
    platform.endsFree = true;
    const double out = parapetOn(job, settingOut, wall) ? kCopingOut : job.roof.verge;
    platform.insideFrom = std::max(platform.insideFrom + job.walls.render, out + kClearOfVerge);
    all.push_back(platform);
  }
  return all;
}

std::vector<Platform> platformsOf(const Job& job, const SettingOut& settingOut,
                                  const std::vector<Platform>& all, size_t wall, double lowest) {
  std::vector<Platform> here;
  const bool gable = settingOut.walls[wall].eaves == EavesKind::Gable;
  const auto put = [&](Platform platform) {
    platform.first = here.empty();
    here.push_back(std::move(platform));
  };
  for (const Platform& platform : all) {
    // On the high side of a slope the first platform may be too near the ground.
    if (platform.level < lowest || (here.empty() && !platform.boards)) continue;
    put(platform);
  }
  if (!gable) return here;
  const auto over =
      gablePlatforms(job, settingOut, wall, here.empty() ? lowest : here.back().level);
  // A gable has no eaves to guard: its own platforms go on where there are any.
  if (!over.empty() && !here.empty() && !here.back().boards) here.pop_back();
  for (const Platform& platform : over) put(platform);
  return here;
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

}  // namespace model
