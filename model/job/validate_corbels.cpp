// Corbels: within what bricks may stand out, and clear of all that lies in the face or before it.
#include <algorithm>
#include <cmath>

#include "model/job/hole_facts.h"
#include "model/job/job_names.h"
#include "model/job/validate.h"
#include "model/job/value_words.h"

namespace model {

namespace {

constexpr double kTolerance = 1e-6;
constexpr double kOnLevel = 1e-3;
constexpr double kCloser = 0.075;      // under openings
constexpr double kGableClear = 0.005;  // of the slope over the last level course
constexpr double kBesideBuilding = 0.010;

std::string pathOf(size_t index) { return "corbel[" + std::to_string(index) + "]"; }

class CorbelCheck {
 public:
  CorbelCheck(const Validation& v, const PlanFacts& plan, const LevelFacts& levels, size_t index)
      : v_(v),
        plan_(plan),
        levels_(levels),
        corbel_(v.job.corbels[index]),
        path_(pathOf(index)),
        who_("corbel " + std::to_string(index + 1)) {}

  // What it takes of its wall's height, when nothing is wrong with it by itself.
  struct Taken {
    size_t wall = 0;
    double low = 0, high = 0;
  };

  std::optional<Taken> check() {
    if (!knows("") || !knows(".wall")) return std::nullopt;
    const auto wall = knownWall(v_, path_ + ".wall", who_, corbel_.wall, plan_.corners());
    if (!wall || !knows(".courses") || !knows(".step") || !knows(".level")) return std::nullopt;
    wall_ = *wall;
    if (!v_.known.has({"walls.outer_leaf", "walls.brick_length"}) || !v_.known.courses() ||
        !canStandOut() || !longEnough())
      return std::nullopt;
    if (!nearFloor(v_, path_ + ".level", who_ + ": level", corbel_.level) || !v_.known.dampCourse())
      return std::nullopt;
    const double course = v_.job.walls.course();
    low_ = levels_.dampCourse +
           course * std::floor((corbel_.level - levels_.dampCourse + kOnLevel) / course);
    high_ = low_ + corbel_.courses * course;
    if (!overDampCourse() || !underTheTop()) return std::nullopt;
    clearOfOpenings();
    clearOfAirBricks();
    clearOfBuildings();
    return Taken{wall_, low_, high_};
  }

 private:
  bool knows(const char* key) const { return v_.known.has(path_ + key); }
  bool error(const char* key, const std::string& what, const std::string& instead) const {
    v_.error(path_ + key, who_ + " " + what, instead);
    return false;
  }
  double out() const { return corbel_.courses * corbel_.step; }
  static double floorMm(double metres) { return std::floor(metres * 1000 + 1e-6) / 1000; }

  // Common practice, no source: a course stands out by a quarter of a brick at most, and all of
  // them by a third of the leaf's thickness, so that its weight stays on it.
  bool canStandOut() const {
    const WallBuildUp& walls = v_.job.walls;
    if (walls.outerLeaf > 0.75 * walls.brickLength)
      return error(".wall", "is on an outer leaf of " + lengthWords(walls.outerLeaf),
                   "only courses of leaves half a brick thick stand out here; leave it out");
    const double quarter = walls.brickLength / 4, third = walls.outerLeaf / 3;
    if (corbel_.step > quarter + kTolerance)
      return error(
          ".step",
          "has courses that stand out " + lengthWords(corbel_.step) + " past the one below",
          "a quarter of a brick, " + lengthWords(floorMm(quarter)) + ", is the most");
    if (out() > third + kTolerance)
      return error(
          corbel_.courses > 1 ? ".courses" : ".step",
          "stands out " + lengthWords(out()) + " from a leaf of " + lengthWords(walls.outerLeaf),
          "a third of its thickness, " + lengthWords(floorMm(third)) +
              " in all, is the most, so that its weight stays on the leaf: fewer courses "
              "or smaller steps; the designer decides");
    if (v_.known.has("walls.render") && corbel_.step < walls.render + kTolerance)
      return error(".step",
                   "stands out " + lengthWords(corbel_.step) + ", no farther than the render of " +
                       lengthWords(walls.render),
                   "it is left bare of render, and its first course stands out past that");
    return true;
  }

  bool longEnough() const {
    const double least = 4 * (v_.job.walls.brickLength + v_.job.walls.joint);
    if (plan_.length[wall_] >= least - kTolerance) return true;
    return error(".wall",
                 "is on wall " + plan_.wallName(wall_) + ", which is " +
                     lengthWords(plan_.length[wall_]) + " long",
                 "four bricks, " + lengthWords(std::ceil(least * 1000) / 1000) +
                     ", are the least that one is laid on");
  }

  // Over one that is stepped up too, with its tray.
  bool overDampCourse() const {
    const double course = v_.job.walls.course();
    double least = levels_.dampCourse + course;
    for (size_t i = 0; i < v_.job.dampCourseSteps.size(); ++i) {
      const DampCourseStep& step = v_.job.dampCourseSteps[i];
      const std::string path = "damp_course_step[" + std::to_string(i) + "]";
      if (wallNamed(step.wall, plan_.corners()) != wall_ || !v_.known.has(path + ".courses"))
        continue;
      least = std::max(least, levels_.dampCourse + (step.courses + 1) * course);
    }
    if (low_ >= least - kTolerance) return true;
    return error(".level", "would begin at " + levelWords(low_) + ", on or under the damp course",
                 "a course at least lies between them: " + levelWords(least) + " or higher");
  }

  bool underTheTop() const {
    if (!v_.known.outerLeafTop() || !v_.known.roofEdges() || !v_.known.has("roof.pitch"))
      return true;
    const double course = v_.job.walls.course();
    // Rafters come down towards the eaves.
    const double roof = levels_.eavesUnderside - out() * levels_.tanPitch;
    const bool gable =
        std::any_of(v_.job.roof.edges.begin(), v_.job.roof.edges.end(), [&](const RoofEdge& edge) {
          return edge.kind == EavesKind::Gable && wallNamed(edge.wall, plan_.corners()) == wall_;
        });
    double most = std::min(levels_.wallTop, levels_.outerLeafTop);
    while (most > roof + kTolerance || (gable && most > levels_.eavesUnderside - kGableClear))
      most -= course;
    if (high_ <= most + kTolerance) return true;
    return error(
        ".level",
        "goes up to " + levelWords(high_) +
            ", over the last course that has room for it "
            "under the roof",
        "its first course lies at " + levelWords(most - corbel_.courses * course) + " at most");
  }

  // It goes from end to end, so it lies over lintels or under sills.
  void clearOfOpenings() const {
    for (const HoleFacts& hole : knownHoles(v_, plan_, wall_)) {
      const double lintel = hole.head + hole.opening->lintelHeight;
      const double under = hole.sill - std::max(hole.opening->sillHeight, kCloser);
      if (low_ > lintel - kTolerance || high_ < under + kTolerance) continue;
      error(".level",
            "meets " + hole.name + ", which takes " + levelWords(under) + " to " +
                levelWords(lintel) + " with its sill and lintel",
            "courses stand out from end to end of a wall: put them over it or under it");
      return;
    }
  }

  void clearOfAirBricks() const {
    const double course = v_.job.walls.course();
    for (size_t i = 0; i < v_.job.airBricks.size(); ++i) {
      const AirBrick& brick = v_.job.airBricks[i];
      const std::string path = "air_brick[" + std::to_string(i) + "]";
      if (wallNamed(brick.wall, plan_.corners()) != wall_ || !v_.known.has(path + ".level") ||
          brick.level + course < low_ || brick.level - course > high_ - course + kTolerance)
        continue;
      error(".level", "lies in the course of air brick " + std::to_string(i + 1),
            "move one of them");
      return;
    }
  }

  // Its place before the wall, round the corners too.
  void clearOfBuildings() const {
    const auto& buildings = v_.job.site.buildings;
    const size_t edge = plan_.edgeOfWall[wall_], n = plan_.corners();
    const Vec2 a = plan_.outline[edge], b = plan_.outline[(edge + 1) % n];
    const Vec2 along = (b - a) / plan_.length[wall_], outward{along.y, -along.x};
    const double beyond = out() + kBesideBuilding;
    const Vec2 p = a + along * kBesideBuilding, q = b - along * kBesideBuilding;
    const Polygon place{p, p + outward * beyond, q + outward * beyond, q};
    for (size_t i = 0; i < buildings.size(); ++i) {
      const std::string path = "site.building[" + std::to_string(i) + "]";
      if (!v_.known.has(path + ".outline") || !v_.known.has(path + ".kind") ||
          buildings[i].kind == BuildingKind::Demolish || buildings[i].outline.size() < 3)
        continue;
      Polygon outline = buildings[i].outline;
      if (signedArea(outline) < 0) std::reverse(outline.begin(), outline.end());
      Polygon strip = place;
      if (signedArea(strip) < 0) std::reverse(strip.begin(), strip.end());
      if (area(intersect({{strip, {}}}, {{outline, {}}})) < 1e-5) continue;
      const std::string name =
          buildings[i].name.empty() ? "building " + std::to_string(i + 1) : buildings[i].name;
      error(".wall",
            "has no room before wall " + plan_.wallName(wall_) + ": \"" + name + "\" stands there",
            "leave it out on that wall");
      return;
    }
  }

  const Validation& v_;
  const PlanFacts& plan_;
  const LevelFacts& levels_;
  const Corbel& corbel_;
  std::string path_, who_;
  size_t wall_ = 0;
  double low_ = 0, high_ = 0;
};

}  // namespace

void validateCorbels(const Validation& v, const std::optional<PlanFacts>& plan,
                     const LevelFacts& levels) {
  if (!plan) return;
  std::vector<std::pair<size_t, CorbelCheck::Taken>> before;
  for (size_t i = 0; i < v.job.corbels.size(); ++i) {
    const auto taken = CorbelCheck(v, *plan, levels, i).check();
    if (!taken) continue;
    for (const auto& [other, there] : before) {
      if (there.wall != taken->wall || taken->low > there.high + kTolerance ||
          taken->high < there.low - kTolerance)
        continue;
      v.error(
          pathOf(i) + ".level",
          "corbel " + std::to_string(i + 1) + " lies on or in corbel " + std::to_string(other + 1),
          "a course at least lies between two on one wall");
      break;
    }
    before.emplace_back(i, *taken);
  }
}

}  // namespace model
