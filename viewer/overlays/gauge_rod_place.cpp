#include "viewer/overlays/gauge_rod_place.h"

#include <algorithm>
#include <array>
#include <cmath>

#include <glm/geometric.hpp>

#include "viewer/overlays/gauge_rod_parts.h"
#include "viewer/overlays/words.h"

namespace viewer {
namespace {

constexpr double kBeside = 0.25;    // metres from the corner, between wall and scaffold
constexpr double kFurthest = 1.6;   // where a small scale pushes it further off
constexpr double kTurn = 0.96;      // radians to either side of the corner's own direction
constexpr double kFromWall = 0.25;  // no nearer to the walls' own
constexpr double kPi = 3.14159265358979323846;
constexpr int kSamples = 5;

// Level and to the right on the sheet.
model::Vec2 rightOf(const Camera& camera) {
  return {std::cos(camera.azimuth), -std::sin(camera.azimuth)};
}

float pixelsToMetre(const OverlaySheet& sheet, const glm::vec3& p) {
  const glm::vec3 half(glm::vec2(rightOf(sheet.frame.camera)) * 0.5f, 0);
  const auto a = sheet.onSheet(p - half), b = sheet.onSheet(p + half);
  return a && b ? glm::distance(*a, *b) : 0;
}

model::Vec2 turned(const model::Vec2& v, double by) {
  return {v.x * std::cos(by) - v.y * std::sin(by), v.x * std::sin(by) + v.y * std::cos(by)};
}

// The ways out from a corner at which a rod may stand: along its diagonal, and to either side as
// far as the walls leave room.
std::array<model::Vec2, 3> waysOut(const model::SettingOut& out, size_t corner) {
  const model::WallLine& next = out.walls[corner];
  const model::WallLine& last = out.walls[(corner + out.walls.size() - 1) % out.walls.size()];
  const model::Vec2 away = glm::normalize(next.outward + last.outward + 1e-9 * next.along);
  const double half = kPi - out.corners[corner].angle / 2;  // of what lies outside
  const double turn = std::clamp(half - kFromWall, 0.0, kTurn);
  return {turned(away, turn), turned(away, -turn), away};
}

float shareSeen(const OverlaySheet& sheet, const StandingRod& rod) {
  int seen = 0;
  for (int i = 0; i < kSamples; ++i) {
    const double part = (i + 0.5) / kSamples;
    const glm::vec3 p = rod.point(rod.rod->foot + (rod.rod->top - rod.rod->foot) * part);
    const auto at = sheet.onSheet(p);
    seen += at && sheet.layout.drawing.contains(*at) && !sheet.hidden(p);
  }
  return float(seen) / kSamples;
}

// What the eye rests on: outside the building's middle a rod stands better on its outer side.
float towardsOutside(const OverlaySheet& sheet, const glm::vec2& corner) {
  const auto middle = sheet.onSheet((sheet.scene.buildingLow + sheet.scene.buildingHigh) * 0.5f);
  return middle && corner.x < middle->x ? -1.0f : 1.0f;
}

}  // namespace

std::optional<Across> acrossAt(const OverlaySheet& sheet, const StandingRod& rod, double level) {
  const auto at = sheet.onSheet(rod.point(level));
  if (!at) return std::nullopt;
  return Across{*at - glm::vec2(rod.half, 0), *at + glm::vec2(rod.half, 0)};
}

std::optional<StandingRod> standRod(const OverlaySheet& sheet, const CornerRod& corner,
                                    float wide) {
  const model::SettingOut& out = sheet.model.settingOut;
  StandingRod rod;
  rod.stands = corner.poured <= sheet.frame.time + 1e-6;
  rod.asBuilt = corner.asBuilt && rod.stands;
  rod.rod = rod.asBuilt ? &*corner.asBuilt : &corner.drawn;
  rod.half = wide / 2;
  const model::Vec2 arris = out.corners[rod.rod->corner].at;
  const glm::vec3 foot = sheet.scene.local({arris, out.levels.dampCourse});
  const auto seen = sheet.frame.camera.project(foot, sheet.aspect());
  const auto at = sheet.onSheet(foot);
  const float metre = pixelsToMetre(sheet, foot);
  if (!seen || !at || metre <= 0 || sheet.cutAway(foot)) return std::nullopt;
  rod.depth = seen->z;
  const float need = wide / 2 + 6 * sheet.pen.unit();  // pixels clear of the corner
  const float outside = towardsOutside(sheet, *at);
  float best = -1;
  for (const model::Vec2& way : waysOut(out, rod.rod->corner)) {
    const float aside = float(glm::dot(way, rightOf(sheet.frame.camera)));
    const float perMetre = std::abs(aside) * metre;
    double off = std::clamp(double(need / std::max(perMetre, 1e-3f)), kBeside, kFurthest);
    if (isPlan(sheet.frame.camera)) off = kBeside;
    StandingRod here = rod;
    here.at = glm::vec2(sheet.scene.local({arris + way * off, 0}));
    here.way = aside < 0 ? -1.0f : 1.0f;
    here.seen = shareSeen(sheet, here);
    const float clear = std::min(1.0f, float(off) * perMetre / need);
    const float worth = 2 * here.seen + 4 * clear + (here.way == outside ? 0.6f : 0.0f);
    if (worth <= best) continue;
    best = worth;
    rod = here;
  }
  return rod;
}

std::vector<StandingRod> standRods(const OverlaySheet& sheet, const std::vector<CornerRod>& rods,
                                   float wide) {
  std::vector<StandingRod> standing;
  for (const CornerRod& corner : rods)
    if (const auto rod = standRod(sheet, corner, wide)) standing.push_back(*rod);
  return standing;
}

namespace {

// How far a corner is from the selected thing on plan; 0 for all when nothing is.
float fromSelected(const OverlaySheet& sheet, const StandingRod& rod) {
  const std::uint32_t selected = sheet.frame.selected;
  if (selected >= sheet.scene.elements.size()) return 0;
  const ElementRange& thing = sheet.scene.elements[selected];
  const model::Corner& corner = sheet.model.settingOut.corners[rod.rod->corner];
  const glm::vec2 p{sheet.scene.local({corner.at, 0})};
  return glm::distance(p, glm::clamp(p, glm::vec2(thing.low), glm::vec2(thing.high)));
}

}  // namespace

size_t nearestRod(const OverlaySheet& sheet, const std::vector<StandingRod>& rods) {
  constexpr float kByThing = 0.5f;  // metres: the corners that a thing has
  constexpr float kSame = 0.05f;    // of the distance
  constexpr float kSeen = 0.3f;
  float closest = 1e9f;
  for (const StandingRod& rod : rods) closest = std::min(closest, fromSelected(sheet, rod));
  const auto usable = [&](const StandingRod& rod) {
    return fromSelected(sheet, rod) <= closest + kByThing;
  };
  const auto before = [&](const StandingRod& a, const StandingRod& b) {
    if (usable(a) != usable(b)) return usable(a);
    const bool aSeen = a.seen >= kSeen, bSeen = b.seen >= kSeen;
    if (aSeen != bSeen) return aSeen;
    if (!aSeen) return a.seen > b.seen;
    if (std::abs(a.depth - b.depth) > kSame * std::min(a.depth, b.depth)) return a.depth < b.depth;
    return a.seen > b.seen;
  };
  size_t best = 0;
  for (size_t i = 1; i < rods.size(); ++i)
    if (before(rods[i], rods[best])) best = i;
  return best;
}

}  // namespace viewer
