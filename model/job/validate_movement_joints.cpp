// Movement joints in their walls, clear of corners and openings.
#include <algorithm>
#include <cmath>

#include "model/job/job_names.h"
#include "model/job/validate.h"
#include "model/job/value_words.h"

namespace model {

namespace {

constexpr double kTolerance = 1e-6;
// Least length of a wall beside one: a brick, so that there is something to end. Common practice,
// no source.
constexpr double kLeastBeside = 0.215;

// Where something lies along its wall, in the file's direction.
struct Along {
  size_t wall = 0;
  double from = 0, to = 0;
};

std::optional<Along> alongOf(const PlanFacts& plan, const std::string& wall,
                             const std::string& from, double at, double length) {
  const auto index = wallNamed(wall, plan.corners());
  if (!index) return std::nullopt;
  const std::string first = letterOfCorner(*index);
  if (from != first && from != letterOfCorner((*index + 1) % plan.corners())) return std::nullopt;
  const double start = from == first ? at : plan.length[*index] - at - length;
  return Along{*index, start, start + length};
}

void validateOne(const Validation& v, size_t index, const PlanFacts& plan) {
  const MovementJoint& joint = v.job.movementJoints[index];
  const std::string path = "movement_joint[" + std::to_string(index) + "]";
  const std::string who = "movement joint " + std::to_string(index + 1);
  if (!v.known.has(path + ".wall")) return;
  const auto wall = knownWall(v, path + ".wall", who, joint.wall, plan.corners());
  if (!wall || !v.known.has(path + ".from")) return;
  const std::string first = letterOfCorner(*wall);
  const std::string second = letterOfCorner((*wall + 1) % plan.corners());
  if (joint.from != first && joint.from != second) {
    v.error(path + ".from",
            who + ": corner \"" + joint.from.substr(0, 60) + "\" is no end of wall " +
                plan.wallName(*wall),
            "write \"" + first + "\" or \"" + second + "\"");
    return;
  }
  if (!v.known.has(path + ".at") || !v.known.has(path + ".width")) return;
  const auto here = alongOf(plan, joint.wall, joint.from, joint.at - joint.width / 2, joint.width);
  if (here->from < kLeastBeside - kTolerance ||
      here->to > plan.length[*wall] - kLeastBeside + kTolerance) {
    v.error(path + ".at",
            who + " is " + lengthWords(joint.at) + " from corner " + joint.from + " of wall " +
                plan.wallName(*wall) + ", which is " + lengthWords(plan.length[*wall]) + " long",
            "leave at least a brick, 215 mm, of wall on both sides");
    return;
  }
  for (size_t i = 0; i < v.job.openings.size(); ++i) {
    const std::string opening = "opening[" + std::to_string(i) + "]";
    if (!v.known.has(opening + ".wall") || !v.known.has(opening + ".from") ||
        !v.known.has(opening + ".at") || !v.known.has(opening + ".width"))
      continue;
    const Opening& hole = v.job.openings[i];
    const auto there = alongOf(plan, hole.wall, hole.from, hole.at, hole.width);
    if (!there || there->wall != *wall) continue;
    if (!v.known.has(opening + ".lintel_bearing")) continue;
    // A half brick, so that the pier between can be laid, and what the lintel bears on.
    const double beside = std::max(0.1, hole.lintelBearing) - kTolerance;
    if (here->to < there->from - beside || here->from > there->to + beside) continue;
    v.error(path + ".at",
            who + " runs through " +
                (hole.name.empty() ? "opening " + std::to_string(i + 1)
                                   : "opening \"" + hole.name + "\"") +
                " or is less than half a brick, or the bearing of its lintel, beside it",
            "it is straight from foot to top: put it where the wall is whole; the drawing decides");
    return;
  }
  for (size_t i = 0; i < index; ++i) {
    const MovementJoint& other = v.job.movementJoints[i];
    const auto there =
        alongOf(plan, other.wall, other.from, other.at - other.width / 2, other.width);
    if (!there || there->wall != *wall || here->to < there->from - kLeastBeside ||
        here->from > there->to + kLeastBeside)
      continue;
    v.error(path + ".at",
            who + " is less than a brick from movement joint " + std::to_string(i + 1),
            "leave one of them out, or give it its place");
    return;
  }
}

}  // namespace

void validateMovementJoints(const Validation& v, const std::optional<PlanFacts>& plan) {
  if (!plan) return;
  for (size_t i = 0; i < v.job.movementJoints.size(); ++i)
    if (v.known.has("movement_joint[" + std::to_string(i) + "]")) validateOne(v, i, *plan);
}

}  // namespace model
