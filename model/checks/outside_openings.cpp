// What lies outside an opening: a drop under its threshold, or a building that stands there.
#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/checks/findings.h"
#include "model/checks/parts.h"
#include "model/job/value_words.h"
#include "model/walls/leaf_plan.h"

namespace model {
namespace {

// Common practice, no source: a step or two down are built anyhow, a higher threshold is a drop.
constexpr double kDrop = 0.600;
constexpr double kInFront = 0.300;  // where somebody steps to
constexpr double kFacing = 1.000;   // straight in front of the face
constexpr double kTouching = 0.050;
constexpr double kTolerance = 1e-3;

std::string lengthTo(double metres) { return lengthWords(std::round(metres * 1000) / 1000); }

std::string pathOf(const Checking& check, size_t opening, const char* key) {
  return "opening[" + std::to_string(check.settingOut.openings[opening].jobIndex) + "]." + key;
}

// Distance straight out from an opening to a building; nothing when it is not in front.
std::optional<double> inFront(const WallLine& wall, const BuiltOpening& opening, Polygon building) {
  if (signedArea(building) < 0) std::reverse(building.begin(), building.end());
  const Polygon strip{wall.at(opening.s0, -kFacing), wall.at(opening.s1, -kFacing),
                      wall.at(opening.s1), wall.at(opening.s0)};
  std::optional<double> away;
  for (const Region& region : intersect({{strip, {}}}, {{building, {}}})) {
    if (area(region) <= kTolerance) continue;
    for (const Vec2& p : region.outer) {
      const double distance = std::max(0.0, glm::dot(p - wall.start, wall.outward));
      away = std::min(away.value_or(distance), distance);
    }
  }
  return away;
}

}  // namespace

std::vector<Facing> openingsFacingBuildings(const Job& job, const SettingOut& settingOut) {
  std::vector<Facing> found;
  for (size_t i = 0; i < settingOut.openings.size(); ++i) {
    const BuiltOpening& opening = settingOut.openings[i];
    std::optional<Facing> nearest;
    for (size_t b = 0; b < job.site.buildings.size(); ++b) {
      const StandingBuilding& building = job.site.buildings[b];
      if (building.kind == BuildingKind::Demolish) continue;
      const double top = levelsAlong(settingOut.terrain, building.outline).low + building.height;
      if (top <= opening.sill) continue;
      const auto away = inFront(settingOut.walls[opening.wall], opening, building.outline);
      if (away && (!nearest || *away < nearest->away)) nearest = Facing{i, b, *away};
    }
    if (nearest) found.push_back(*nearest);
  }
  return found;
}

std::vector<OverDrop> openingsOverDrops(const Job& job, const SettingOut& settingOut) {
  const std::vector<Facing> facing = openingsFacingBuildings(job, settingOut);
  std::vector<OverDrop> found;
  for (size_t i = 0; i < settingOut.openings.size(); ++i) {
    const BuiltOpening& opening = settingOut.openings[i];
    const bool closed =
        std::any_of(facing.begin(), facing.end(), [&](const Facing& f) { return f.opening == i; });
    if (opening.kind == OpeningKind::Window || closed) continue;
    const WallLine& wall = settingOut.walls[opening.wall];
    const double ground = levelsAlong(settingOut.terrain, wall.at(opening.s0, -kInFront),
                                      wall.at(opening.s1, -kInFront))
                              .low;
    if (opening.sill - ground > kDrop + kTolerance) found.push_back({i, opening.sill - ground});
  }
  return found;
}

void checkOpeningsOverDrops(const Checking& check) {
  for (const OverDrop& drop : openingsOverDrops(check.job, check.settingOut)) {
    const BuiltOpening& opening = check.settingOut.openings[drop.opening];
    check.warning(
        pathOf(check, drop.opening, "sill"),
        openingLabel(check.settingOut, drop.opening) + " has its threshold at " +
            levelWords(opening.sill) + ", " + lengthTo(drop.drop) +
            " over the ground outside it at " + levelWords(opening.sill - drop.drop),
        "ask the designer for the steps or the guard there, or how the ground is made up");
  }
}

void checkOpeningsFacingBuildings(const Checking& check) {
  for (const Facing& facing : openingsFacingBuildings(check.job, check.settingOut)) {
    const BuiltOpening& opening = check.settingOut.openings[facing.opening];
    const StandingBuilding& building = check.job.site.buildings[facing.building];
    const std::string name =
        building.name.empty() ? "a standing building" : "\"" + building.name + "\"";
    const std::string where = openingLabel(check.settingOut, facing.opening) + " in " +
                              check.settingOut.walls[opening.wall].name;
    if (facing.away <= kTouching)
      check.warning(pathOf(check, facing.opening, "wall"), where + " opens on to " + name,
                    "opening up that building's wall, and propping it meanwhile, is for the "
                    "engineer; agree when it is done");
    else
      check.warning(
          pathOf(check, facing.opening, "wall"),
          where + " opens on to " + name + ", " + lengthTo(facing.away) + " in front of it",
          "ask the designer whether that is meant; if the building's wall is opened up "
          "too, that and its propping are for the engineer");
  }
}

}  // namespace model
