#include "model/walls/junctions.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

namespace model {

namespace {

constexpr double kOffFace = 0.030;  // metres that a wall may end before the face
constexpr double kHair = 1e-6;
constexpr double kLeast = 0.300;  // of height that is joined

// How far a point lies before the nearest side of an outline.
double beforeFace(const Polygon& outline, const Vec2& p) {
  const double away = distanceToOutline(outline, p);
  return contains(outline, p) ? -away : away;
}

}  // namespace

std::vector<JunctionPlan> junctionPlans(const Job& job, const SettingOut& settingOut) {
  std::vector<JunctionPlan> plans;
  for (size_t i = 0; i < job.junctions.size(); ++i) {
    const WallJunction& junction = job.junctions[i];
    const auto wall = settingOut.wallNamed(junction.wall);
    const auto corner = settingOut.cornerNamed(junction.corner);
    const auto building =
        std::find_if(job.site.buildings.begin(), job.site.buildings.end(),
                     [&](const StandingBuilding& b) { return b.name == junction.building; });
    if (!wall || !corner || building == job.site.buildings.end()) continue;
    JunctionPlan plan;
    plan.junction = i;
    plan.wall = *wall;
    plan.atStart = *corner == settingOut.walls[*wall].from;
    plan.building = static_cast<size_t>(building - job.site.buildings.begin());
    Polygon outline = building->outline;
    if (signedArea(outline) < 0) std::reverse(outline.begin(), outline.end());
    plan.gap = std::max(0.0, beforeFace(outline, settingOut.corners[*corner].at));
    if (plan.gap > kOffFace + kHair) continue;
    const LeafPlan leaf = leafPlan(job, settingOut, *wall, LeafSide::Outer);
    // A course is left over what goes in, under the old eaves.
    const double eaves = levelsAlong(settingOut.terrain, outline).low + building->height;
    plan.low = settingOut.levels.dampCourse;
    plan.top = std::min(leaf.levelTop, eaves - job.walls.course());
    if (!leaf.layer.empty() && plan.top > plan.low + kLeast) plans.push_back(plan);
  }
  return plans;
}

Polygon beyondEnd(const SettingOut& settingOut, const JunctionPlan& plan, double from, double to,
                  double d0, double d1) {
  const WallLine& line = settingOut.walls[plan.wall];
  // Walked along, d is to the left.
  const double s0 = plan.atStart ? -to : line.length + from;
  const double s1 = plan.atStart ? -from : line.length + to;
  return {line.at(s0, d0), line.at(s1, d0), line.at(s1, d1), line.at(s0, d1)};
}

std::vector<double> starterTies(const Job& job, const SettingOut& settingOut,
                                const JunctionPlan& plan) {
  const double course = job.walls.course(), apart = job.junctions[plan.junction].tieUp;
  const int every = std::max(1, static_cast<int>(std::floor(apart / course + kHair)));
  std::vector<double> beds;
  for (int i = every;; i += every) {
    const double bed = settingOut.levels.dampCourse + i * course;
    if (bed + course > plan.top + kHair) return beds;
    beds.push_back(bed);
  }
}

}  // namespace model
