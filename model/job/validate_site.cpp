// The site: its boundary, its levels, and what stands on it.
#include <algorithm>
#include <cmath>
#include <utility>

#include <glm/geometric.hpp>

#include "model/geometry/grown.h"
#include "model/job/dig_room.h"
#include "model/job/job_names.h"
#include "model/job/validate.h"
#include "model/job/value_words.h"

namespace model {

namespace {

constexpr double kSamePlace = 0.001;  // metres
constexpr double kOverlap = 1e-4;     // square metres: less is rounding on the drawing

std::string pointName(size_t i) { return "point " + std::to_string(i + 1); }

std::string buildingPath(size_t i) { return "site.building[" + std::to_string(i) + "]"; }

std::string buildingName(const Validation& v, size_t i) {
  const std::string& name = v.job.site.buildings[i].name;
  return name.empty() ? "building " + std::to_string(i + 1) : "building \"" + name + "\"";
}

double overlap(const Outline& a, const Outline& b) {
  const auto box = [](const Outline& outline) {
    Vec2 low = outline[0], high = outline[0];
    for (const Vec2& p : outline) {
      low = {std::min(low.x, p.x), std::min(low.y, p.y)};
      high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    }
    return std::pair{low, high};
  };
  const auto [lowA, highA] = box(a);
  const auto [lowB, highB] = box(b);
  if (lowA.x >= highB.x || lowB.x >= highA.x || lowA.y >= highB.y || lowB.y >= highA.y) return 0;
  return area(intersect({{a, {}}}, {{b, {}}}));
}

// Both anticlockwise, as the booleans want them.
Polygon anticlockwise(Outline outline) {
  if (signedArea(outline) < 0) std::reverse(outline.begin(), outline.end());
  return outline;
}

std::optional<Polygon> validateBoundary(const Validation& v, const std::optional<PlanFacts>& plan) {
  if (!v.known.has("site.boundary")) return std::nullopt;
  const Outline& given = v.job.site.boundary;
  if (given.empty()) {
    if (v.places.count("site.boundary")) {
      v.error("site.boundary", "the boundary has no corners",
              "give at least 3, or leave site.boundary out");
    }
    return std::nullopt;
  }
  if (!soundOutline(v, given, "site.boundary", "the boundary", pointName)) return std::nullopt;
  const Polygon boundary = anticlockwise(given);
  if (plan && area(subtract({{plan->outline, {}}}, {{boundary, {}}})) > kOverlap) {
    v.error("site.boundary", "the building goes over the boundary",
            "the boundary goes round all of the outline");
    return std::nullopt;
  }
  if (plan && v.known.wallThickness() && v.known.has("foundations.width")) {
    const Regions concrete = grown(plan->outline, roomOutsideWall(v.job));
    if (area(subtract(concrete, {{boundary, {}}})) > kOverlap) {
      v.warning("site.boundary", "the foundations go over the boundary",
                "agree it with the neighbour, or move the building");
    }
  }
  return boundary;
}

void validateSpots(const Validation& v, const std::optional<Polygon>& boundary) {
  const std::vector<SpotLevel>& spots = v.job.site.spots;
  const auto path = [](size_t i) { return "site.spots[" + std::to_string(i) + "]"; };
  std::vector<size_t> byX;
  for (size_t i = 0; i < spots.size(); ++i) {
    if (v.known.has(path(i) + ".at")) byX.push_back(i);
  }
  std::stable_sort(byX.begin(), byX.end(),
                   [&](size_t a, size_t b) { return spots[a].at.x < spots[b].at.x; });
  for (size_t k = 0; k < byX.size(); ++k) {
    const SpotLevel& spot = spots[byX[k]];
    for (size_t before = k; before-- > 0;) {
      const SpotLevel& other = spots[byX[before]];
      if (spot.at.x - other.at.x > kSamePlace) break;
      if (std::abs(spot.at.y - other.at.y) > kSamePlace) continue;
      const size_t first = std::min(byX[k], byX[before]), second = std::max(byX[k], byX[before]);
      if (!v.known.has(path(first) + ".level") || !v.known.has(path(second) + ".level")) break;
      if (spot.level == other.level && spot.at == other.at) {
        v.warning(path(second), "spot level " + std::to_string(second + 1) + " is there twice",
                  "take one of them out");
      } else {
        v.error(path(second),
                "spot levels " + std::to_string(first + 1) + " and " + std::to_string(second + 1) +
                    " are at the same place",
                "one place has one level");
      }
      break;
    }
  }
  for (const size_t i : byX) {
    if (boundary && !contains(*boundary, spots[i].at, kSamePlace)) {
      v.warning(path(i) + ".at", "spot level " + std::to_string(i + 1) + " is outside the boundary",
                "check the point; the ground is only built inside");
    }
  }
  for (size_t i = 0; i < spots.size(); ++i) {
    nearFloor(v, path(i) + ".level", "spot level " + std::to_string(i + 1), spots[i].level);
  }
}

// Is the outer leaf's damp course stepped up in the place of the outline that is nearest?
bool besideStep(const Validation& v, const PlanFacts& plan, const Vec2& spot) {
  const double nearest = distanceToOutline(plan.outline, spot);
  for (size_t i = 0; i < v.job.dampCourseSteps.size(); ++i) {
    const DampCourseStep& step = v.job.dampCourseSteps[i];
    const auto wall = wallNamed(step.wall, plan.corners());
    if (!wall) continue;
    Vec2 a = v.job.outline[*wall], b = v.job.outline[(*wall + 1) % plan.corners()];
    if (step.from != letterOfCorner(*wall)) std::swap(a, b);
    const Vec2 along = (b - a) / plan.length[*wall];
    const double s = glm::dot(spot - a, along);
    const double away = std::abs(glm::dot(spot - a, Vec2{-along.y, along.x}));
    if (s > step.at - kSamePlace && s < step.to + kSamePlace && away < nearest + kSamePlace)
      return true;
  }
  return false;
}

void warnOfLowDampCourse(const Validation& v, const PlanFacts& plan, const LevelFacts& levels) {
  for (size_t i = 0; i < v.job.site.spots.size(); ++i) {
    const SpotLevel& spot = v.job.site.spots[i];
    const std::string path = "site.spots[" + std::to_string(i) + "]";
    if (!v.known.has(path + ".at") || !v.known.has(path + ".level")) continue;
    const bool beside =
        contains(plan.outline, spot.at) || distanceToOutline(plan.outline, spot.at) < 1.0;
    if (!beside || levels.dampCourse - spot.level >= 0.150 - 1e-6) continue;
    if (besideStep(v, plan, spot.at)) continue;  // that is held against the step itself
    const double above = levels.dampCourse - spot.level;
    // NHBC Good Craftsmanship Guide, Brickwork; Approved Document C.
    v.warning(path + ".level",
              "the damp course at " + levelWords(levels.dampCourse) + " is " +
                  (above > 0 ? "only " + lengthWords(above) + " above" : "under") +
                  " the ground here, " + levelWords(spot.level),
              "150 mm above outside ground is the usual least (NHBC Good Craftsmanship Guide, "
              "Brickwork); lower the ground outside or raise the damp course");
  }
}

void validateBuildings(const Validation& v, const std::optional<PlanFacts>& plan) {
  const auto& buildings = v.job.site.buildings;
  std::vector<size_t> sound;
  for (size_t i = 0; i < buildings.size(); ++i) {
    if (!v.known.has(buildingPath(i) + ".outline")) continue;
    const StandingBuilding& building = buildings[i];
    const std::string who = buildingName(v, i);
    if (!soundOutline(v, building.outline, buildingPath(i) + ".outline", who, pointName)) continue;
    const Polygon outline = anticlockwise(building.outline);
    if (plan && v.known.has(buildingPath(i) + ".kind") && building.kind != BuildingKind::Demolish &&
        overlap(outline, plan->outline) > kOverlap) {
      v.error(buildingPath(i) + ".outline", who + " stands where the new building goes",
              "check both outlines; kind = \"demolish\" if it is taken down first");
    }
    for (const size_t other : sound) {
      if (overlap(outline, anticlockwise(buildings[other].outline)) <= kOverlap) continue;
      v.error(buildingPath(i) + ".outline", who + " and " + buildingName(v, other) + " overlap",
              "give each piece of ground one building");
      break;
    }
    sound.push_back(i);
  }
}

}  // namespace

void validateSite(const Validation& v, const std::optional<PlanFacts>& plan) {
  validateSpots(v, validateBoundary(v, plan));
  if (plan && v.known.dampCourse()) warnOfLowDampCourse(v, *plan, levelFacts(v.job));
  validateBuildings(v, plan);
  if (plan) validateTrenches(v, *plan);
}

}  // namespace model
