// Garden walls: square, in whole courses, on their own ground.
#include <algorithm>
#include <cmath>
#include <limits>

#include <glm/geometric.hpp>

#include "model/geometry/grown.h"
#include "model/job/dig_room.h"
#include "model/job/garden_outline.h"
#include "model/job/validate.h"
#include "model/job/value_words.h"

namespace model {

namespace {

constexpr double kOverlap = 1e-4;       // square metres: less is rounding on the drawing
constexpr double kOffSquare = 0.00873;  // sine of half a degree
constexpr double kLevelGround = -0.15;  // of a site without spot levels

struct GardenFacts {
  size_t index = 0;
  Regions concrete;  // everything that is dug for it
};

class GardenCheck {
 public:
  GardenCheck(const Validation& v, size_t index)
      : v_(v),
        wall_(v.job.gardenWalls[index]),
        path_("garden_wall[" + std::to_string(index) + "]"),
        who_(wall_.name.empty() ? "garden wall " + std::to_string(index + 1)
                                : "garden wall \"" + wall_.name.substr(0, 60) + "\"") {}

  // True when it has a place on plan.
  bool sound() {
    bool good = knows("bricks") && thickness();
    good = knows("line") && v_.known.has("walls.brick_length") && v_.known.has("walls.joint") &&
           good && line();
    if (knows("bricks") && knows("bond")) bond();
    if (knows("base") && knows("top")) heights();
    return good && knows("pier_bricks") && knows("foundation_width") && foundation();
  }

  Regions concrete() const {
    return grown(gardenFootprint(v_.job.walls, wall_), gardenReach(v_.job.walls, wall_));
  }

  void error(const char* key, const std::string& what, const std::string& instead) const {
    v_.error(path_ + "." + key, who_ + " " + what, instead);
  }
  const std::string& who() const { return who_; }

 private:
  bool knows(const char* key) const { return v_.known.has(path_ + "." + key); }

  bool thickness() const {
    const double halves = 2 * wall_.bricks;
    if (std::fabs(halves - std::round(halves)) < 1e-6) return true;
    error("bricks", "is no whole number of half bricks thick", "write 0.5, 1, 1.5 or 2");
    return false;
  }

  bool line() const {
    const std::vector<Vec2>& line = wall_.line;
    if (line.size() < 2) {
      error("line", "has no length", "give two points of its face at least");
      return false;
    }
    // Room at each end of a length for a corner and two bricks.
    const double least =
        2 * gardenThickness(v_.job.walls, wall_.bricks) + 2 * v_.job.walls.brickLength;
    for (size_t i = 0; i + 1 < line.size(); ++i) {
      const double length = glm::distance(line[i], line[i + 1]);
      if (length >= least) continue;
      error("line",
            "is " + lengthWords(length) + " from point " + std::to_string(i + 1) + " to point " +
                std::to_string(i + 2),
            "a length of it that can be bonded is " + lengthWords(std::ceil(least * 1000) / 1000) +
                " or more");
      return false;
    }
    for (size_t i = 1; i + 1 < line.size(); ++i) {
      const Vec2 in = glm::normalize(line[i] - line[i - 1]),
                 out = glm::normalize(line[i + 1] - line[i]);
      if (std::fabs(glm::dot(in, out)) < kOffSquare) continue;
      error("line", "does not turn at a right angle at point " + std::to_string(i + 1),
            "corners of solid walls are square to half a degree; take points on a straight out, or "
            "make two walls of it");
      return false;
    }
    if (!crossingEdges(gardenFootprint(v_.job.walls, wall_))) return true;
    error("line", "runs into itself", "make it a line from end to end");
    return false;
  }

  void bond() const {
    const BondKind bond = wall_.bond;
    const bool halfOnly = bond == BondKind::Stretcher || bond == BondKind::Stack;
    if (halfOnly && wall_.bricks > 0.75) {
      error("bond", "has no bricks across it in that bond",
            "write \"english\" or \"flemish\", or make it half a brick thick");
    } else if (bond != BondKind::English && wall_.bricks > 1.25) {
      error("bond", "is thicker than that bond is laid here", "write \"english\", or bricks = 1");
    } else if (knows("pier_bricks") && !gardenPierFits(wall_)) {
      error("pier_bricks", "cannot be bonded with such piers",
            wall_.bricks > 1.25
                ? "piers are for walls up to one brick thick: pier_bricks = 0"
                : "a pier is half a brick or a brick larger than its wall; half-brick walls have "
                  "1.5 in stretcher and english bond only, english garden wall bond has piers of 1 "
                  "or 2, and stack bond none");
    } else if (knows("pier_bricks") && knows("pier_every") && wall_.pierEvery > 0 &&
               wall_.pierBricks == 0) {
      v_.warning(path_ + ".pier_every", who_ + " has a spacing of piers but no piers",
                 "give pier_bricks, or take pier_every out");
    }
  }

  void heights() const {
    const WallBuildUp& walls = v_.job.walls;
    if (!v_.known.courses()) return;
    const double height = wall_.top - wall_.base;
    const int courses = gardenCourses(walls, wall_);
    if (courses < 2) {
      error("top", "ends at " + levelWords(wall_.top) + ", and stands at " + levelWords(wall_.base),
            "its top is at least two courses over its base");
      return;
    }
    // What beds give: as cross joints do.
    if (std::fabs(height - courses * walls.course()) > courses * kJointGives + 1e-9) {
      const double up = wall_.base + std::ceil(height / walls.course()) * walls.course();
      error("top",
            "is " + lengthWords(height) + " high, which is no whole number of courses of " +
                lengthWords(walls.course()),
            levelWords(up - walls.course()) + " or " + levelWords(up) + " would be");
      return;
    }
    if (knows("corbel_courses") && knows("corbel_step") && knows("bricks") && !corbels(courses))
      return;
    if (wall_.dampCourse && knows("damp_course") && knows("corbel_courses")) dampCourse(courses);
    const size_t spots = v_.job.site.spots.size();
    if (!v_.known.hasOfEach("site.spots", spots, "at") ||
        !v_.known.hasOfEach("site.spots", spots, "level") || !knows("line"))
      return;
    double low = std::numeric_limits<double>::max(), high = std::numeric_limits<double>::lowest();
    for (const Vec2& p : wall_.line) {
      const double ground = groundNear(p);
      low = std::min(low, ground);
      high = std::max(high, ground);
    }
    if (wall_.line.empty()) return;
    if (wall_.base > low - 1e-6)
      error(
          "base",
          "stands at " + levelWords(wall_.base) + " and the ground at it is at " + levelWords(low),
          "its concrete is in the ground: how deep is the drawing's to say");
    else if (wall_.top < high + 1e-6)
      error("top", "ends at " + levelWords(wall_.top) + ", under the ground at " + levelWords(high),
            "its top is over the ground");
    const double plain = wall_.top - wall_.corbelCourses * v_.job.walls.course();
    if (wall_.corbelCourses > 0 && wall_.top > high && plain < high + 1e-6)
      error("corbel_courses",
            "stands out from " + levelWords(plain) + " on, under the ground at " + levelWords(high),
            "courses that stand out are over the ground");
  }

  // Common practice, no source: a course stands out by a quarter of a brick at most, and all of
  // them by a third of the wall's thickness at each side.
  bool corbels(int courses) const {
    if (wall_.corbelCourses == 0) return true;
    const double quarter = v_.job.walls.brickLength / 4,
                 third = gardenThickness(v_.job.walls, wall_.bricks) / 3;
    const double out = wall_.corbelCourses * wall_.corbelStep;
    const auto floorMm = [](double metres) { return std::floor(metres * 1000 + 1e-6) / 1000; };
    if (wall_.corbelCourses > courses - 2) {
      error("corbel_courses",
            "has " + std::to_string(courses) + " courses, and " +
                std::to_string(wall_.corbelCourses) + " of them stand out",
            "two courses at least stand under them");
    } else if (wall_.corbelStep > quarter + 1e-6) {
      error("corbel_step",
            "has courses that stand out " + lengthWords(wall_.corbelStep) + " past the one below",
            "a quarter of a brick, " + lengthWords(floorMm(quarter)) + ", is the most");
    } else if (out > third + 1e-6) {
      error("corbel_courses",
            "stands out " + lengthWords(out) + " at each side of " +
                lengthWords(gardenThickness(v_.job.walls, wall_.bricks)),
            "a third of its thickness, " + lengthWords(floorMm(third)) +
                " in all, is the most: fewer courses, or smaller steps");
    } else {
      return true;
    }
    return false;
  }

  void dampCourse(int courses) const {
    const int over = *gardenDampCourse(v_.job.walls, wall_);
    const int plain = courses - wall_.corbelCourses;
    if (over >= 1 && over < plain) return;
    const double gauge = gardenGauge(v_.job.walls, wall_);
    error("damp_course",
          "has its damp course at " + levelWords(*wall_.dampCourse) +
              (over < 1 ? ", under its first course" : ", over its last plain course"),
          "it lies in a bed joint from " + levelWords(wall_.base + gauge) + " to " +
              levelWords(wall_.base + (plain - 1) * gauge));
  }

  // The nearest spot level.
  double groundNear(const Vec2& p) const {
    double nearest = std::numeric_limits<double>::max(), level = kLevelGround;
    for (const SpotLevel& spot : v_.job.site.spots) {
      const double distance = glm::distance(spot.at, p);
      if (distance >= nearest) continue;
      nearest = distance;
      level = spot.level;
    }
    return level;
  }

  bool foundation() const {
    if (gardenFooting(v_.job.walls, wall_) > 1e-6) return true;
    error("foundation_width",
          "is " + lengthWords(gardenThickness(v_.job.walls, wall_.bricks)) +
              " thick and its concrete only " + lengthWords(wall_.foundationWidth) + " wide",
          "concrete is wider than the wall on it, as its designer draws it");
    return false;
  }

  const Validation& v_;
  const GardenWall& wall_;
  const std::string path_, who_;
};

Polygon anticlockwise(Polygon outline) {
  if (signedArea(outline) < 0) std::reverse(outline.begin(), outline.end());
  return outline;
}

bool meets(const Regions& a, const Regions& b) { return area(intersect(a, b)) > kOverlap; }

// How far the sides of the cellar's dig lean back at most.
double batterReach(const Job& job) {
  constexpr double kUpright = 85, kPi = 3.14159265358979323846;
  if (job.ground.batter >= kUpright) return 0;
  double ground = job.site.spots.empty() ? kLevelGround : job.site.spots[0].level;
  for (const SpotLevel& spot : job.site.spots) ground = std::max(ground, spot.level);
  const Cellar& cellar = *job.cellar;
  const double bottom = cellar.floor - cellar.makeUp - cellar.slab - cellar.blinding;
  return std::max(0.0, ground - bottom) / std::tan(job.ground.batter * kPi / 180);
}

void clearOfBuilding(const Validation& v, const GardenCheck& check, const Regions& concrete,
                     const PlanFacts& plan) {
  if (v.known.wallThickness() && v.known.has("foundations.width") &&
      meets(concrete, grown(plan.outline, roomOutsideWall(v.job)))) {
    check.error("line", "has its concrete in the building's foundations",
                "keep it clear of them: how a wall joins the building is for the designer");
    return;
  }
  if (!v.job.cellar || !v.known.hasAllOf("cellar") || !v.known.hasAllOf("ground") ||
      !v.known.hasOfEach("site.spots", v.job.site.spots.size(), "level"))
    return;
  const Outline& given = v.job.cellar->outline;
  const Polygon cellar = anticlockwise(given.empty() ? plan.outline : given);
  if (cellar.size() < 3 || crossingEdges(cellar)) return;
  if (meets(concrete, grown(cellar, roomRoundCellar(v.job) + batterReach(v.job))))
    check.error(
        "line", "has its concrete over the cellar's dig",
        "keep it clear of the working space and of the slope of the sides, which are filled "
        "ground");
}

void clearOfSite(const Validation& v, const GardenCheck& check, const Regions& concrete) {
  for (size_t i = 0; i < v.job.site.buildings.size(); ++i) {
    const StandingBuilding& building = v.job.site.buildings[i];
    const std::string path = "site.building[" + std::to_string(i) + "]";
    if (!v.known.has(path + ".outline") || !v.known.has(path + ".kind") ||
        building.outline.size() < 3 || crossingEdges(building.outline) ||
        building.kind == BuildingKind::Demolish ||
        !meets(concrete, {{anticlockwise(building.outline), {}}}))
      continue;
    check.error(
        "line",
        "has its concrete under " + (building.name.empty() ? "building " + std::to_string(i + 1)
                                                           : "\"" + building.name + "\""),
        "keep it clear of what stands");
    return;
  }
  const Outline& boundary = v.job.site.boundary;
  if (!v.known.has("site.boundary") || boundary.size() < 3 || crossingEdges(boundary)) return;
  if (area(subtract(concrete, {{anticlockwise(boundary), {}}})) > kOverlap)
    check.error("line", "has its concrete over the boundary",
                "keep the concrete inside; a wall on the line is for both owners to agree");
}

}  // namespace

void validateGardenWalls(const Validation& v, const std::optional<PlanFacts>& plan) {
  std::vector<GardenFacts> before;
  for (size_t i = 0; i < v.job.gardenWalls.size(); ++i) {
    if (!v.known.has("garden_wall[" + std::to_string(i) + "]")) continue;
    GardenCheck check(v, i);
    if (!check.sound()) continue;
    const Regions concrete = check.concrete();
    if (plan) clearOfBuilding(v, check, concrete, *plan);
    clearOfSite(v, check, concrete);
    for (const GardenFacts& other : before) {
      if (!meets(concrete, other.concrete)) continue;
      check.error("line",
                  "has its concrete in that of garden wall " + std::to_string(other.index + 1),
                  "make them one wall, or keep them apart");
      break;
    }
    before.push_back({i, concrete});
  }
}

}  // namespace model
