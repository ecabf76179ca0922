// Air bricks: in a wall, clear of its corners and openings, over the concrete.
#include <cmath>

#include "model/job/hole_facts.h"
#include "model/job/job_names.h"
#include "model/job/validate.h"
#include "model/job/value_words.h"

namespace model {

namespace {

constexpr double kTolerance = 1e-6;
constexpr double kCloser = 0.075;  // beside and under openings

class AirBrickCheck {
 public:
  AirBrickCheck(const Validation& v, const PlanFacts& plan, const LevelFacts& levels, size_t index)
      : v_(v),
        plan_(plan),
        levels_(levels),
        brick_(v.job.airBricks[index]),
        path_("air_brick[" + std::to_string(index) + "]"),
        who_("air brick " + std::to_string(index + 1)) {}

  void check() {
    if (!v_.known.has(path_) || !v_.known.has(path_ + ".wall")) return;
    const auto wall = knownWall(v_, path_ + ".wall", who_, brick_.wall, plan_.corners());
    if (!wall || !v_.known.has(path_ + ".from")) return;
    wall_ = *wall;
    const std::string first = letterOfCorner(wall_);
    const std::string second = letterOfCorner((wall_ + 1) % plan_.corners());
    if (brick_.from != first && brick_.from != second) {
      v_.error(path_ + ".from",
               who_ + ": corner \"" + brick_.from.substr(0, 60) + "\" is no end of wall " +
                   plan_.wallName(wall_),
               "write \"" + first + "\" or \"" + second + "\"");
      return;
    }
    if (!v_.known.has(path_ + ".at") || !v_.known.wallThickness()) return;
    at_ = brick_.from == first ? brick_.at : plan_.length[wall_] - brick_.at;
    if (clearOfCorners() && v_.known.has(path_ + ".level") &&
        nearFloor(v_, path_ + ".level", who_ + ": level", brick_.level) && underTheTop()) {
      clearOfOpenings();
      clearOfMovementJoints();
    }
  }

 private:
  double half() const { return v_.job.walls.brickLength / 2 + v_.job.walls.joint; }

  bool clearOfCorners() const {
    // The inner face begins farther along than the outer; half a brick is left beside it.
    const auto needed = [&](size_t corner) {
      const double wall = v_.job.walls.total() / std::tan(plan_.angle[corner] / 2);
      return std::max(0.0, wall) + half() + v_.job.walls.brickLength / 2;
    };
    const double atStart = needed(wall_), atEnd = needed((wall_ + 1) % plan_.corners());
    if (at_ >= atStart - kTolerance && at_ <= plan_.length[wall_] - atEnd + kTolerance) return true;
    v_.error(path_ + ".at",
             who_ + " is " + lengthWords(brick_.at) + " from corner " + brick_.from +
                 ", in or beside the wall that meets it at a corner",
             "at least " + lengthWords(std::ceil(atStart * 1000) / 1000) + " from corner " +
                 letterOfCorner(wall_) + " and " + lengthWords(std::ceil(atEnd * 1000) / 1000) +
                 " from the other are needed; wall " + plan_.wallName(wall_) + " is " +
                 lengthWords(plan_.length[wall_]) + " long");
    return false;
  }

  void clearOfMovementJoints() const {
    for (size_t i = 0; i < v_.job.movementJoints.size(); ++i) {
      const MovementJoint& joint = v_.job.movementJoints[i];
      const std::string path = "movement_joint[" + std::to_string(i) + "]";
      if (wallNamed(joint.wall, plan_.corners()) != wall_ || !v_.known.has(path + ".at") ||
          !v_.known.has(path + ".from") || !v_.known.has(path + ".width"))
        continue;
      const bool fromStart = joint.from == letterOfCorner(wall_);
      const double there = fromStart ? joint.at : plan_.length[wall_] - joint.at;
      if (std::abs(at_ - there) > half() + joint.width / 2 - kTolerance) continue;
      v_.error(path_ + ".at", who_ + " lies in movement joint " + std::to_string(i + 1),
               "move one of them along");
      return;
    }
  }

  bool underTheTop() const {
    if (!v_.known.outerLeafTop()) return true;
    const double top = std::min(levels_.wallTop, levels_.outerLeafTop) - v_.job.walls.course();
    if (brick_.level <= top + kTolerance) return true;
    v_.error(path_ + ".level",
             who_ + ": level " + levelWords(brick_.level) +
                 " is over the last course that runs "
                 "all along, at " +
                 levelWords(top),
             "levels are in metres; lower it");
    return false;
  }

  void clearOfOpenings() const {
    for (const HoleFacts& hole : knownHoles(v_, plan_, wall_)) {
      const Opening& opening = *hole.opening;
      const double head = hole.head + opening.lintelHeight;
      const double beside = std::max({opening.lintelBearing, opening.padstone, kCloser});
      // Courses are counted from the damp course, so that it may lie lower by one.
      if (at_ + half() < hole.from - beside || at_ - half() > hole.to + beside) continue;
      if (brick_.level >= head + v_.job.walls.course() ||
          brick_.level + v_.job.walls.course() <= hole.sill - std::max(opening.sillHeight, kCloser))
        continue;
      v_.error(path_ + ".at", who_ + " meets " + hole.name + " or what its lintels bear on",
               "move it along, or under the sill");
      return;
    }
  }

  const Validation& v_;
  const PlanFacts& plan_;
  const LevelFacts& levels_;
  const AirBrick& brick_;
  std::string path_, who_;
  size_t wall_ = 0;
  double at_ = 0;  // from the wall's first corner in the file
};

}  // namespace

void validateAirBricks(const Validation& v, const std::optional<PlanFacts>& plan,
                       const LevelFacts& levels) {
  if (!plan) return;
  for (size_t i = 0; i < v.job.airBricks.size(); ++i) AirBrickCheck(v, *plan, levels, i).check();
}

}  // namespace model
