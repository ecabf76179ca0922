// Levels among each other, and the build-up of wall and floor.
#include <algorithm>
#include <cmath>

#include "model/job/birdsmouth.h"
#include "model/job/lengths.h"
#include "model/job/validate.h"
#include "model/job/value_words.h"

namespace model {

namespace {

constexpr double kLeastStorey = 1.8;  // metres from floor to floor
constexpr double kMostStorey = 12;    // metres
constexpr double kFarFromFloor = 60;  // metres: a level this far from the floor is a slip
constexpr double kTolerance = 1e-6;

std::string at(const std::string& path, size_t index) {
  return path + "[" + std::to_string(index) + "]";
}

}  // namespace

bool nearFloor(const Validation& v, const std::string& path, const std::string& who, double level) {
  if (!v.known.has(path) || !v.known.groundFloor()) return true;
  const double floor = v.job.storeys[0].floor;
  if (std::abs(level - floor) <= kFarFromFloor) return true;
  const bool mm = std::abs(level / 1000 - floor) <= kFarFromFloor && std::abs(level) >= 1;
  v.error(path,
          who + " is " + levelWords(level) + ", " +
              std::to_string(std::lround(std::abs(level - floor))) + " m from the ground floor",
          mm ? "levels are in metres; for " + lengthWords(level / 1000) + " write " +
                   levelValueText(level / 1000)
             : "give every level from the same 0.000");
  return false;
}

namespace {

void validateStoreyNames(const Validation& v) {
  const std::vector<Storey>& storeys = v.job.storeys;
  for (size_t i = 0; i < storeys.size(); ++i) {
    const std::string path = at("storey", i);
    if (!v.known.has(path + ".name")) continue;
    if (storeys[i].name.empty()) {
      v.error(path + ".name", "storey " + std::to_string(i + 1) + " has an empty name",
              "openings name it; write name = \"First floor\"");
    }
    for (size_t j = 0; j < i; ++j) {
      if (storeys[j].name != storeys[i].name || !v.known.has(at("storey", j) + ".name")) continue;
      v.error(path + ".name", "two storeys are called \"" + storeys[i].name + "\"",
              "give each its own name; openings name it");
      break;
    }
  }
}

std::string floorOf(const Validation& v, size_t storey) {
  return v.known.has(at("storey", storey) + ".name")
             ? "floor of \"" + v.job.storeys[storey].name + "\""
             : "floor of storey " + std::to_string(storey + 1);
}

void validateFloors(const Validation& v) {
  const std::vector<Storey>& storeys = v.job.storeys;
  const bool thickness =
      v.known.has({"upper_floor.finish", "upper_floor.deck", "upper_floor.joist_depth"});
  for (size_t i = 1; i < storeys.size(); ++i) {
    const std::string path = at("storey", i);
    if (!v.known.storeyFloor(i) ||
        !nearFloor(v, path + ".floor", floorOf(v, i), storeys[i].floor) ||
        !v.known.storeyFloor(i - 1)) {
      continue;
    }
    const double rise = storeys[i].floor - storeys[i - 1].floor;
    const UpperFloor& floor = v.job.upperFloor;
    const double thick = floor.finish + floor.deck + floor.joistDepth;
    if (rise < kLeastStorey || (thickness && rise - thick < 1.5)) {
      v.error(path + ".floor",
              floorOf(v, i) + " is " + levelWords(storeys[i].floor) + ", " +
                  (rise <= 0 ? std::string("not above") : "only " + lengthWords(rise) + " above") +
                  " the floor below it",
              "storeys go from the ground up, at least 1800 mm from floor to floor and 1500 mm "
              "under the joists");
    } else if (rise > kMostStorey) {
      v.error(path + ".floor",
              floorOf(v, i) + " is " + lengthWords(rise) + " above the one below it",
              "12000 mm is the most; levels are in metres");
    }
  }
}

void validateBuildUp(const Validation& v) {
  if (!v.known.has({"walls.insulation", "walls.cavity"})) return;
  const WallBuildUp& walls = v.job.walls;
  if (walls.insulation > walls.cavity + kTolerance) {
    v.error("walls.insulation",
            "the insulation is " + lengthWords(walls.insulation) + " in a cavity of " +
                lengthWords(walls.cavity),
            "make the cavity at least as wide as the insulation");
    return;
  }
  const double clear = walls.cavity - walls.insulation;
  if (clear > kTolerance && clear < 0.050 - kTolerance) {
    // NHBC Good Craftsmanship Guide, Brickwork: clear cavity at least 50 mm.
    v.warning("walls.insulation",
              "only " + lengthWords(clear) + " of the cavity stays clear beside the insulation",
              "50 mm is usual (NHBC Good Craftsmanship Guide, Brickwork), or fill it wholly");
  }
}

void validateJoints(const Validation& v) {
  const WallBuildUp& walls = v.job.walls;
  const auto wrong = [&](const char* key, double value, const char* side) {
    v.error(std::string("walls.") + key,
            std::string("walls.") + key + " is " + lengthWords(value) + " with joints of " +
                lengthWords(walls.joint),
            std::string("it is ") + side + " `joint`");
  };
  if (!v.known.has({"walls.joint"})) return;
  if (walls.jointLeast && v.known.has({"walls.joint_least"}) &&
      *walls.jointLeast > walls.joint + kTolerance)
    wrong("joint_least", *walls.jointLeast, "at most");
  if (walls.jointMost && v.known.has({"walls.joint_most"}) &&
      *walls.jointMost < walls.joint - kTolerance)
    wrong("joint_most", *walls.jointMost, "at least");
  if (!walls.leastCut || !v.known.has({"walls.cut_least", "walls.brick_length"})) return;
  const double half = (walls.brickLength - walls.joint) / 2;
  if (*walls.leastCut <= half + kTolerance) return;
  v.error("walls.cut_least",
          "walls.cut_least is " + lengthWords(*walls.leastCut) + ", longer than half a brick",
          "half bricks are laid at every other jamb: at most " + lengthWords(half));
}

void validateDampCourse(const Validation& v, const LevelFacts& levels) {
  if (!v.known.dampCourse()) return;
  const double level = levels.dampCourse;
  if (!nearFloor(v, "walls.damp_course", "walls.damp_course", level)) return;
  if (level > levels.floor + 0.5 || level < levels.floor - 1.0) {
    v.error("walls.damp_course",
            "walls.damp_course is " + levelWords(level) + " with the ground floor at " +
                levelWords(levels.floor),
            "it lies within 1000 mm under and 500 mm over the finished ground floor");
  }
}

void validateWallTop(const Validation& v, const LevelFacts& levels) {
  if (!v.known.wallTop() || !v.known.lastFloor()) return;
  const double top = levels.wallTop, last = v.job.storeys.back().floor;
  if (!nearFloor(v, "walls.top", "walls.top", top)) return;
  const bool dampCourse = v.known.dampCourse();
  const double least = dampCourse ? std::max(last + 0.3, levels.dampCourse + 0.6) : last + 0.3;
  if (top < least - kTolerance) {
    v.error("walls.top",
            "walls.top is " + levelWords(top) + " with the last floor at " + levelWords(last),
            "at least " + levelWords(least) + " is needed");
    return;
  }
  if (top > last + kMostStorey) {
    v.error("walls.top",
            "walls.top is " + levelWords(top) + " with the last floor at " + levelWords(last),
            "at most " + levelWords(last + kMostStorey) + " is allowed; add the storeys between");
    return;
  }
  if (!dampCourse || !v.known.courses()) return;
  const double courses = (top - levels.dampCourse) / v.job.walls.course();
  if (v.job.walls.top && std::abs(courses - std::round(courses)) * v.job.walls.course() > 0.002) {
    v.warning("walls.top", "walls.top is not a whole number of courses above the damp course",
              "the nearest are " +
                  levelWords(levels.dampCourse + std::floor(courses) * v.job.walls.course()) +
                  " and " +
                  levelWords(levels.dampCourse + std::ceil(courses) * v.job.walls.course()));
  }
  if (v.known.outerLeafTop() && levels.outerLeafTop < levels.dampCourse + 0.3) {
    v.error("walls.top",
            "the rafters come down to " + levelWords(levels.eavesUnderside) +
                " at the outer face, which leaves no outer leaf",
            "make the walls higher or the pitch less");
  }
}

void validateGround(const Validation& v, const LevelFacts& levels) {
  if (!v.known.groundAtPlan() || !v.known.groundFloor()) return;
  const double ground = levels.lowestGround;
  if (levels.floor >= ground - 5 && levels.floor <= ground + 10) return;
  // Single wild levels have a message of their own.
  if (!v.job.site.spots.empty() && std::abs(levels.floor - ground) > kFarFromFloor) return;
  const bool spots = !v.job.site.spots.empty();
  v.error(spots ? "site.spots" : "storey[0].floor",
          "the ground at the plan is about " + levelWords(ground) + " and the ground floor " +
              levelWords(levels.floor),
          spots ? "give every level from the same 0.000"
                : "without [[site.spots]] the ground is at -0.150; give its levels");
}

}  // namespace

LevelFacts levelFacts(const Job& job) {
  LevelFacts levels;
  const WallBuildUp& walls = job.walls;
  const GroundFloor& floor = job.groundFloor;
  if (!job.storeys.empty()) levels.floor = job.storeys[0].floor;
  const double last = job.storeys.empty() ? 0 : job.storeys.back().floor;
  const auto courses = [&](double level, auto rounding) {
    return levels.dampCourse +
           rounding((level - levels.dampCourse) / walls.course()) * walls.course();
  };
  levels.dampCourse = walls.dampCourse.value_or(levels.floor);
  levels.slabUnderside = levels.floor - floor.screed - floor.insulation - floor.slab;
  levels.wallTop = walls.top.value_or(courses(last + 2.4, [](double n) { return std::round(n); }));
  levels.tanPitch = std::tan(job.roof.pitch * 3.14159265358979323846 / 180);
  levels.plateTop = levels.wallTop + job.roof.plateDepth;
  levels.eavesUnderside =
      levels.plateTop -
      (walls.outerLeaf + walls.cavity + birdsmouthSeat(job.roof)) * levels.tanPitch;
  levels.outerLeafTop = courses(std::min(levels.wallTop, levels.eavesUnderside) + kTolerance,
                                [](double n) { return std::floor(n); });
  levels.lowestGround = job.site.spots.empty() ? -0.150 : 1e9;
  double nearest = 1e9, nearestLevel = 0;
  for (const SpotLevel& spot : job.site.spots) {
    const double away = job.outline.size() < 3 || contains(job.outline, spot.at)
                            ? 0
                            : distanceToOutline(job.outline, spot.at);
    if (away < 3) levels.lowestGround = std::min(levels.lowestGround, spot.level);
    if (away < nearest) {
      nearest = away;
      nearestLevel = spot.level;
    }
  }
  if (levels.lowestGround > 1e8) levels.lowestGround = nearestLevel;
  return levels;
}

void validateLevels(const Validation& v, const LevelFacts& levels) {
  if (v.job.storeys.empty()) {
    v.error("storey", "there is no storey", "add [[storey]] with a name and a floor level");
    return;
  }
  validateStoreyNames(v);
  validateFloors(v);
  const UpperFloor& floor = v.job.upperFloor;
  if (v.known.has({"upper_floor.joist_width", "upper_floor.spacing"}) &&
      floor.joistWidth >= floor.spacing) {
    v.error("upper_floor.spacing",
            "joists of " + lengthWords(floor.joistWidth) + " stand " + lengthWords(floor.spacing) +
                " centre to centre",
            "the spacing is more than the joists' width");
  }
  validateBuildUp(v);
  validateJoints(v);
  validateDampCourse(v, levels);
  validateWallTop(v, levels);
  validateGround(v, levels);
}

}  // namespace model
