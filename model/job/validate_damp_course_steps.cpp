// Steps of the damp course: clear of corners, openings, movement joints and what is built in.
#include <algorithm>
#include <cmath>

#include "model/job/hole_facts.h"
#include "model/job/job_names.h"
#include "model/job/validate.h"
#include "model/job/value_words.h"

namespace model {

namespace {

constexpr double kTolerance = 1e-6;
constexpr double kTrayRise = 0.140;  // of the tray from the step, across the cavity
constexpr double kCloser = 0.075;    // beside and under openings

std::string pathOf(size_t index) { return "damp_course_step[" + std::to_string(index) + "]"; }

class StepCheck {
 public:
  StepCheck(const Validation& v, const PlanFacts& plan, const LevelFacts& levels, size_t index)
      : v_(v),
        plan_(plan),
        levels_(levels),
        step_(v.job.dampCourseSteps[index]),
        path_(pathOf(index)),
        who_("step " + std::to_string(index + 1) + " of the damp course") {}

  struct Taken {
    size_t wall = 0;
    double from = 0, to = 0;  // along the wall, in the file's direction
  };

  // Its place, when nothing is wrong with it by itself.
  std::optional<Taken> check() {
    if (!knows("") || !knows(".wall")) return std::nullopt;
    const auto wall = knownWall(v_, path_ + ".wall", who_, step_.wall, plan_.corners());
    if (!wall || !knows(".from")) return std::nullopt;
    wall_ = *wall;
    first_ = letterOfCorner(wall_);
    second_ = letterOfCorner((wall_ + 1) % plan_.corners());
    if (step_.from != first_ && step_.from != second_) {
      error(".from", "corner \"" + step_.from.substr(0, 60) + "\" is no end of wall " + wallName(),
            "write \"" + first_ + "\" or \"" + second_ + "\"");
      return std::nullopt;
    }
    if (!knows(".at") || !knows(".to") || !knows(".courses") || !v_.known.courses() ||
        !v_.known.wallThickness())
      return std::nullopt;
    if (v_.job.walls.cavity <= 0) {
      error(".wall", "the walls have no cavity, and the tray that it needs lies in one",
            "leave it out, or give walls.cavity");
      return std::nullopt;
    }
    from_ = step_.from == first_ ? step_.at : plan_.length[wall_] - step_.to;
    to_ = step_.from == first_ ? step_.to : plan_.length[wall_] - step_.at;
    if (!longEnough() || !clearOfCorners() || !underTheTop()) return std::nullopt;
    clearOfOpenings();
    clearOfMovementJoints();
    clearOfAirBricks();
    clearOfBarriers();
    return Taken{wall_, from_, to_};
  }

 private:
  bool knows(const char* key) const { return v_.known.has(path_ + key); }
  std::string wallName() const { return plan_.wallName(wall_); }
  double brick() const { return v_.job.walls.brickLength + v_.job.walls.joint; }
  double rise() const { return step_.courses * v_.job.walls.course(); }
  double level() const { return levels_.dampCourse + rise(); }
  void error(const char* key, const std::string& what, const std::string& instead) const {
    v_.error(path_ + key, who_ + ": " + what, instead);
  }
  // Does it come nearer than `beside` to something along the wall?
  bool meets(double from, double to, double beside) const {
    return from_ < to + beside - kTolerance && to_ > from - beside + kTolerance;
  }

  bool longEnough() const {
    const double least = std::ceil(2 * brick() * 1000) / 1000;
    if (step_.to - step_.at >= least - kTolerance) return true;
    error(".to",
          "it goes from " + lengthWords(step_.at) + " to " + lengthWords(step_.to) +
              ", which is less than two bricks",
          "`at` and `to` are both measured from corner " + step_.from + "; at least " +
              lengthWords(least) + " are between them");
    return false;
  }

  // The cavity has its whole width there, and a brick ends at the strip.
  bool clearOfCorners() const {
    const auto needed = [&](size_t corner) {
      const double wall = v_.job.walls.total() / std::tan(plan_.angle[corner] / 2);
      return std::ceil((std::max(0.0, wall) + brick()) * 1000) / 1000;
    };
    const double atStart = needed(wall_), atEnd = needed((wall_ + 1) % plan_.corners());
    if (from_ >= atStart - kTolerance && to_ <= plan_.length[wall_] - atEnd + kTolerance)
      return true;
    error((from_ < atStart - kTolerance) == (step_.from == first_) ? ".at" : ".to",
          "it runs over a corner of wall " + wallName() + ", or is less than a brick beside it",
          "at least " + lengthWords(atStart) + " from corner " + first_ + " and " +
              lengthWords(atEnd) + " from corner " + second_ + " are needed; the wall is " +
              lengthWords(plan_.length[wall_]) + " long");
    return false;
  }

  bool underTheTop() const {
    if (!v_.known.dampCourse() || !v_.known.outerLeafTop()) return true;
    const double most = levels_.outerLeafTop - kTrayRise - v_.job.walls.course();
    if (level() <= most + kTolerance) return true;
    error(".courses", "it would lie at " + levelWords(level()) + ", too near to the wall's top",
          "there is room for it up to " + levelWords(most));
    return false;
  }

  // From the damp course up to over the tray: beside them closers, under them sills.
  void clearOfOpenings() const {
    if (!v_.known.dampCourse()) return;
    for (const HoleFacts& hole : knownHoles(v_, plan_, wall_)) {
      const double beside = std::max(v_.job.walls.brickLength, kCloser);
      const double under = std::max(hole.opening->sillHeight, kCloser);
      const double lintel = hole.head + hole.opening->lintelHeight;
      const bool over = hole.sill - under > level() + kTrayRise - kTolerance;
      if (!meets(hole.from, hole.to, beside) || over || lintel < levels_.dampCourse) continue;
      error((hole.from < from_) == (step_.from == first_) ? ".at" : ".to",
            "it runs over " + hole.name + ", or is less than a brick beside it",
            "leave " + lengthWords(beside) +
                " beside the opening, or keep the tray, which rises to " +
                levelWords(level() + kTrayRise) + ", under its sill; the drawing decides");
      return;
    }
  }

  void clearOfMovementJoints() const {
    for (size_t i = 0; i < v_.job.movementJoints.size(); ++i) {
      const MovementJoint& joint = v_.job.movementJoints[i];
      const std::string path = "movement_joint[" + std::to_string(i) + "]";
      if (wallNamed(joint.wall, plan_.corners()) != wall_ || !v_.known.has(path + ".at") ||
          !v_.known.has(path + ".from") || !v_.known.has(path + ".width"))
        continue;
      const double at = joint.from == first_ ? joint.at : plan_.length[wall_] - joint.at;
      if (!meets(at - joint.width / 2, at + joint.width / 2, v_.job.walls.brickLength)) continue;
      error((at < (from_ + to_) / 2) == (step_.from == first_) ? ".at" : ".to",
            "it runs over movement joint " + std::to_string(i + 1) +
                ", or is less than a brick beside it",
            "end it a brick, " + lengthWords(v_.job.walls.brickLength) + ", before the joint");
      return;
    }
  }

  // Courses are counted from the damp course, so that an air brick may lie lower by one.
  void clearOfAirBricks() const {
    for (size_t i = 0; i < v_.job.airBricks.size(); ++i) {
      const AirBrick& brick = v_.job.airBricks[i];
      const std::string path = "air_brick[" + std::to_string(i) + "]";
      if (wallNamed(brick.wall, plan_.corners()) != wall_ || !v_.known.has(path + ".at") ||
          !v_.known.has(path + ".from") || !v_.known.has(path + ".level") || !v_.known.dampCourse())
        continue;
      const double course = v_.job.walls.course();
      const double at = brick.from == first_ ? brick.at : plan_.length[wall_] - brick.at;
      const bool apart = brick.level + course < levels_.dampCourse - kTolerance ||
                         brick.level - course > level() + kTrayRise;
      if (apart || !meets(at, at, 1.5 * this->brick())) continue;
      error("", "air brick " + std::to_string(i + 1) + " is in its way or under its tray",
            "move one of them; the drawing decides");
      return;
    }
  }

  void clearOfBarriers() const {
    for (size_t i = 0; i < v_.job.cavityBarriers.size(); ++i) {
      const CavityBarrier& barrier = v_.job.cavityBarriers[i];
      const std::string path = "cavity_barrier[" + std::to_string(i) + "]";
      if (wallNamed(barrier.wall, plan_.corners()) != wall_ || !barrier.level ||
          !v_.known.has(path + ".level") || !v_.known.dampCourse() ||
          *barrier.level > level() + kTrayRise - kTolerance)
        continue;
      error(".courses",
            "its tray meets cavity barrier " + std::to_string(i + 1) + ", at " +
                levelWords(*barrier.level),
            "put the barrier at " + levelWords(level() + kTrayRise) +
                " or higher, or take fewer courses; the drawing decides");
      return;
    }
  }

  const Validation& v_;
  const PlanFacts& plan_;
  const LevelFacts& levels_;
  const DampCourseStep& step_;
  std::string path_, who_, first_, second_;
  size_t wall_ = 0;
  double from_ = 0, to_ = 0;
};

}  // namespace

void validateDampCourseSteps(const Validation& v, const std::optional<PlanFacts>& plan,
                             const LevelFacts& levels) {
  if (!plan) return;
  std::vector<std::pair<size_t, StepCheck::Taken>> before;
  for (size_t i = 0; i < v.job.dampCourseSteps.size(); ++i) {
    const auto taken = StepCheck(v, *plan, levels, i).check();
    if (!taken) continue;
    const double beside = v.job.walls.brickLength + v.job.walls.joint;
    for (const auto& [other, there] : before) {
      if (there.wall != taken->wall || taken->from > there.to + beside - kTolerance ||
          taken->to < there.from - beside + kTolerance)
        continue;
      v.error(pathOf(i) + ".at",
              "step " + std::to_string(i + 1) +
                  " of the damp course is less than a brick from step " +
                  std::to_string(other + 1) + " in the same wall",
              "leave " + lengthWords(std::ceil(beside * 1000) / 1000) +
                  " between them, or make them one");
      break;
    }
    before.emplace_back(i, *taken);
  }
}

}  // namespace model
