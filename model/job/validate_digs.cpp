// The clear bottom of what is dug, against the boundary and what stands: nothing is dug away under
// a building. A cellar must keep clear of it; a foundation stops at it, since what is built on to a
// house has to. (What a sloped side takes besides is worked out from the ground, in model/checks.)
#include <algorithm>
#include <cmath>

#include "model/geometry/grown.h"
#include "model/job/dig_room.h"
#include "model/job/validate.h"
#include "model/job/value_words.h"

namespace model {

namespace {

constexpr double kOverlap = 1e-4;  // square metres: less is rounding on the drawing

const char* kUnderpinning = "; holding a building up over a dig is for its engineer to draw";

// Of two outlines that do not cross.
double distanceBetween(const Polygon& a, const Polygon& b) {
  double least = 1e300;
  for (const Vec2& p : a) least = std::min(least, distanceToOutline(b, p));
  for (const Vec2& p : b) least = std::min(least, distanceToOutline(a, p));
  return least;
}

double wholeMillimetres(double metres) { return std::round(metres * 1000) / 1000; }
double upToMillimetre(double metres) { return std::ceil(metres * 1000 - 1e-6) / 1000; }

// A building that stays, anticlockwise; nothing when its outline is not sound.
std::optional<Polygon> outlineOf(const StandingBuilding& building) {
  if (building.kind == BuildingKind::Demolish || building.outline.size() < 3 ||
      crossingEdges(building.outline)) {
    return std::nullopt;
  }
  Polygon outline = building.outline;
  if (signedArea(outline) < 0) std::reverse(outline.begin(), outline.end());
  return outline;
}

bool knowsBuilding(const Validation& v, size_t index) {
  const std::string path = "site.building[" + std::to_string(index) + "]";
  // Without its name it would be told of by another.
  return v.known.has(path + ".outline") && v.known.has(path + ".kind") &&
         v.known.has(path + ".name");
}

std::string nameOf(const StandingBuilding& building, size_t index) {
  return building.name.empty() ? "building " + std::to_string(index + 1)
                               : "\"" + building.name + "\"";
}

}  // namespace

void validateCellarDig(const Validation& v, const Polygon& cellar) {
  if (!v.known.has({"ground.working_space", "cellar.toe", "cellar.membrane"})) return;
  const double room = roomRoundCellar(v.job);
  const Regions dig = grown(cellar, room);
  const Outline& boundary = v.job.site.boundary;
  if (v.known.has("site.boundary") && boundary.size() >= 3 && !crossingEdges(boundary) &&
      area(subtract(dig, {{boundary, {}}})) > kOverlap) {
    v.warning("cellar", "the cellar dig with its working space goes over the site's boundary",
              "agree it with the neighbour, or make ground.working_space less");
  }
  for (size_t i = 0; i < v.job.site.buildings.size(); ++i) {
    const StandingBuilding& building = v.job.site.buildings[i];
    if (!knowsBuilding(v, i)) continue;
    const auto outline = outlineOf(building);
    if (!outline || area(intersect(dig, {{*outline, {}}})) <= kOverlap) continue;
    // One that stands over the cellar itself has its message among the buildings.
    if (area(intersect({{cellar, {}}}, {{*outline, {}}})) > kOverlap) continue;
    v.error(
        "cellar",
        "the cellar dig goes under " + nameOf(building, i) + ", which stands " +
            lengthWords(wholeMillimetres(distanceBetween(cellar, *outline))) +
            " from the cellar's walls; " + lengthWords(room) + " round them is dug to the bottom",
        "keep the cellar's walls " + lengthWords(upToMillimetre(room)) +
            " or more from it, or make ground.working_space or cellar.toe less" + kUnderpinning);
  }
}

void validateTrenches(const Validation& v, const PlanFacts& plan) {
  if (!v.known.has("foundations.width") || !v.known.wallThickness()) return;
  const double room = roomOutsideWall(v.job);
  if (room <= 0) return;
  Regions trenches = grown(plan.outline, room);
  // Misspelt, they are not in the job; blocks by name have a thickness of their own.
  if (!v.known.has("walls.blocks") || !v.known.has("walls.bricks")) return;
  if (!v.known.has("cellar.outline")) return;
  if (v.job.cellar) {
    // Walls on the cellar have no trench, and what is dug round it is looked at by itself.
    if (!v.known.has({"ground.working_space", "cellar.toe", "cellar.membrane"})) return;
    Polygon cellar = v.job.cellar->outline.empty() ? plan.outline : v.job.cellar->outline;
    if (cellar.size() < 3 || crossingEdges(cellar)) return;
    if (signedArea(cellar) < 0) std::reverse(cellar.begin(), cellar.end());
    trenches = subtract(trenches, grown(cellar, std::max(room, roomRoundCellar(v.job))));
  }
  for (size_t i = 0; i < v.job.site.buildings.size(); ++i) {
    const std::string path = "site.building[" + std::to_string(i) + "]";
    const StandingBuilding& building = v.job.site.buildings[i];
    const auto outline = outlineOf(building);
    if (!knowsBuilding(v, i) || !outline) continue;
    if (area(intersect(trenches, {{*outline, {}}})) <= kOverlap) continue;
    if (area(intersect({{plan.outline, {}}}, {{*outline, {}}})) > kOverlap) continue;
    // What is built on to a house has its foundations cut off at the house's wall.
    v.warning(path + ".outline",
              "the foundations reach " + lengthWords(wholeMillimetres(room)) +
                  " beyond the new walls and " + nameOf(building, i) + " stands " +
                  lengthWords(wholeMillimetres(distanceBetween(plan.outline, *outline))) +
                  " from them; trench and concrete are shown cut off at the building",
              "how they meet, and how it stands while the trench is open, is for the designer");
  }
}

}  // namespace model
