// The roof's edge against the boundary and what stands beside it.
#include <algorithm>
#include <cmath>

#include "model/checks/parts.h"

namespace model {
namespace {

constexpr double kSome = 1e-3;  // square metres: less is rounding

}  // namespace

void checkRoofOnSite(const Checking& check) {
  const Polygon& eaves = check.settingOut.eavesOutline;
  const Outline& given = check.job.site.boundary;
  if (given.size() >= 3 &&
      area(subtract({{eaves, {}}}, {{check.settingOut.terrain.boundary, {}}})) > kSome) {
    check.warning("site.boundary", "the edge of the roof goes over the boundary",
                  "ask the designer, and agree it with the neighbour; gutters go further out");
  }
  const std::vector<StandingBuilding>& buildings = check.job.site.buildings;
  for (size_t i = 0; i < buildings.size(); ++i) {
    if (buildings[i].kind == BuildingKind::Demolish) continue;
    Polygon outline = buildings[i].outline;
    if (signedArea(outline) < 0) std::reverse(outline.begin(), outline.end());
    const LevelRange ground = levelsAlong(check.settingOut.terrain, outline);
    if (ground.low + buildings[i].height <= check.settingOut.levels.eaves - 0.5) continue;
    if (area(intersect({{eaves, {}}}, {{outline, {}}})) <= kSome) continue;
    check.warning("site.building[" + std::to_string(i) + "]",
                  "the edge of the roof reaches over \"" + buildings[i].name + "\"",
                  "how they meet is for the drawing to say");
  }
}

}  // namespace model
