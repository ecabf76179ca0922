// Cavity barriers: upright or level, in the cavity, clear of openings, trays and each other.
#include <algorithm>
#include <cmath>

#include "model/job/hole_facts.h"
#include "model/job/job_names.h"
#include "model/job/validate.h"
#include "model/job/value_words.h"

namespace model {

namespace {

constexpr double kTolerance = 1e-6;
constexpr double kGableClear = 0.005;
constexpr double kCloser = 0.075;    // beside openings
constexpr double kTrayRise = 0.140;  // of a tray over a lintel, across the cavity

std::string pathOf(size_t index) { return "cavity_barrier[" + std::to_string(index) + "]"; }

class BarrierCheck {
 public:
  BarrierCheck(const Validation& v, const PlanFacts& plan, const LevelFacts& levels, size_t index)
      : v_(v),
        plan_(plan),
        levels_(levels),
        barrier_(v.job.cavityBarriers[index]),
        path_(pathOf(index)),
        who_("cavity barrier " + std::to_string(index + 1)) {}

  // Its wall and what it takes there, when nothing is wrong with it by itself.
  struct Taken {
    size_t wall = 0;
    bool upright = true;
    double from = 0, to = 0;  // along the wall, or levels
  };

  std::optional<Taken> check() {
    if (!v_.known.has(path_) || !v_.known.has(path_ + ".wall")) return std::nullopt;
    const auto wall = knownWall(v_, path_ + ".wall", who_, barrier_.wall, plan_.corners());
    if (!wall || !v_.known.has(path_ + ".at") || !v_.known.has(path_ + ".level") ||
        !v_.known.has(path_ + ".width"))
      return std::nullopt;
    wall_ = *wall;
    if (barrier_.at.has_value() == barrier_.level.has_value()) {
      v_.error(
          path_,
          who_ + (barrier_.at ? " has both `at` and `level`" : " has neither `at` nor `level`"),
          "give `at` for an upright one, or `level` for one along the whole wall");
      return std::nullopt;
    }
    if (v_.known.has("walls.cavity") && v_.job.walls.cavity <= 0) {
      v_.error(path_ + ".wall", who_ + ": the walls have no cavity",
               "leave it out, or give walls.cavity");
      return std::nullopt;
    }
    return barrier_.at ? upright() : level();
  }

 private:
  std::optional<Taken> upright() {
    if (!v_.known.has(path_ + ".from")) return std::nullopt;
    const std::string first = letterOfCorner(wall_);
    const std::string second = letterOfCorner((wall_ + 1) % plan_.corners());
    const std::string from =
        barrier_.from.empty() ? barrier_.wall.substr(0, barrier_.wall.find('-')) : barrier_.from;
    if (from != first && from != second) {
      v_.error(path_ + ".from",
               who_ + ": corner \"" + from.substr(0, 60) + "\" is no end of wall " +
                   plan_.wallName(wall_),
               "write \"" + first + "\" or \"" + second + "\"");
      return std::nullopt;
    }
    if (!v_.known.wallThickness()) return std::nullopt;
    const double length = plan_.length[wall_], half = barrier_.width / 2;
    const double at = from == first ? *barrier_.at : length - *barrier_.at;
    // Clear of the cavity that comes round the corner.
    const auto needed = [&](size_t corner) {
      return std::max(0.0, v_.job.walls.total() / std::tan(plan_.angle[corner] / 2)) + half;
    };
    const double atStart = needed(wall_), atEnd = needed((wall_ + 1) % plan_.corners());
    if (at < atStart - kTolerance || at > length - atEnd + kTolerance) {
      v_.error(path_ + ".at",
               who_ + " is " + lengthWords(*barrier_.at) + " from corner " + from +
                   ", outside the cavity of wall " + plan_.wallName(wall_) + " or in its corner",
               "at least " + lengthWords(std::ceil(atStart * 1000) / 1000) + " from corner " +
                   first + " and " + lengthWords(std::ceil(atEnd * 1000) / 1000) +
                   " from the other are needed; the wall is " + lengthWords(length) + " long");
      return std::nullopt;
    }
    for (const HoleFacts& hole : knownHoles(v_, plan_, wall_)) {
      const double beside = std::max(hole.opening->lintelBearing, kCloser);
      if (at + half < hole.from - beside + kTolerance || at - half > hole.to + beside - kTolerance)
        continue;
      v_.error(path_ + ".at", who_ + " meets " + hole.name + " or the tray over it",
               "leave " + lengthWords(beside) +
                   " beside it, or put the barrier elsewhere; the "
                   "drawing decides");
      return std::nullopt;
    }
    meetsAirBrick(at - half, at + half, -1e9, 1e9, ".at");
    return Taken{wall_, true, at - half, at + half};
  }

  std::optional<Taken> level() {
    const double low = *barrier_.level, high = low + barrier_.width;
    if (!nearFloor(v_, path_ + ".level", who_ + ": level", low)) return std::nullopt;
    if (v_.known.dampCourse() && low < levels_.dampCourse - kTolerance) {
      v_.error(path_ + ".level",
               who_ + ": level " + levelWords(low) + " is under the damp course at " +
                   levelWords(levels_.dampCourse),
               "levels are in metres; raise it");
      return std::nullopt;
    }
    if (v_.known.wallTop() && v_.known.eavesUnderside() && v_.known.roofEdges() &&
        v_.known.courses()) {
      const double top = cavityTop();
      if (high > top + kTolerance) {
        v_.error(path_ + ".level",
                 who_ + " goes up to " + levelWords(high) + ", over the top of the cavity, " +
                     levelWords(top),
                 "levels are in metres; lower it");
        return std::nullopt;
      }
    }
    for (const HoleFacts& hole : knownHoles(v_, plan_, wall_)) {
      const double lintel = hole.head + hole.opening->lintelHeight;
      if (high < lintel - kTolerance || low > lintel + kTrayRise - kTolerance) continue;
      v_.error(path_ + ".level",
               who_ + " meets the cavity tray over " + hole.name + ", which rises from " +
                   levelWords(lintel),
               "put it under " + levelWords(lintel) + " or at " + levelWords(lintel + kTrayRise) +
                   " or higher; the drawing decides");
      return std::nullopt;
    }
    meetsAirBrick(-1e9, 1e9, low, high, ".level");
    return Taken{wall_, false, low, high};
  }

  // To where the cavity goes all along; at a gable its leaves may end level a course lower.
  double cavityTop() const {
    const double slope = levels_.eavesUnderside + v_.job.walls.outerLeaf * levels_.tanPitch;
    const double top = std::min(levels_.wallTop, slope);
    const bool gable =
        std::any_of(v_.job.roof.edges.begin(), v_.job.roof.edges.end(), [&](const RoofEdge& edge) {
          return edge.kind == EavesKind::Gable && wallNamed(edge.wall, plan_.corners()) == wall_;
        });
    return gable ? top - v_.job.walls.course() - kGableClear : top;
  }

  // Courses are counted from the damp course, so that an air brick may lie lower by one.
  void meetsAirBrick(double from, double to, double low, double high, const char* key) const {
    for (size_t i = 0; i < v_.job.airBricks.size(); ++i) {
      const AirBrick& brick = v_.job.airBricks[i];
      const std::string path = "air_brick[" + std::to_string(i) + "]";
      if (wallNamed(brick.wall, plan_.corners()) != wall_ || !v_.known.has(path + ".at") ||
          !v_.known.has(path + ".from") || !v_.known.has(path + ".level") || !v_.known.courses())
        continue;
      const bool fromStart = brick.from == letterOfCorner(wall_);
      const double at = fromStart ? brick.at : plan_.length[wall_] - brick.at;
      const double half = v_.job.walls.brickLength / 2 + v_.job.walls.joint;
      const double course = v_.job.walls.course();
      if (at + half < from || at - half > to || brick.level + course < low ||
          brick.level - course > high)
        continue;
      v_.error(path_ + key, who_ + " meets the sleeve of air brick " + std::to_string(i + 1),
               "move one of them");
      return;
    }
  }

  const Validation& v_;
  const PlanFacts& plan_;
  const LevelFacts& levels_;
  const CavityBarrier& barrier_;
  std::string path_, who_;
  size_t wall_ = 0;
};

}  // namespace

void validateCavityBarriers(const Validation& v, const std::optional<PlanFacts>& plan,
                            const LevelFacts& levels) {
  if (!plan) return;
  using Taken = BarrierCheck::Taken;
  std::vector<std::pair<size_t, Taken>> before;
  for (size_t i = 0; i < v.job.cavityBarriers.size(); ++i) {
    const auto taken = BarrierCheck(v, *plan, levels, i).check();
    if (!taken) continue;
    for (const auto& [other, there] : before) {
      if (there.wall != taken->wall || there.upright != taken->upright ||
          taken->to < there.from + kTolerance || taken->from > there.to - kTolerance)
        continue;
      v.error(pathOf(i) + (taken->upright ? ".at" : ".level"),
              "cavity barrier " + std::to_string(i + 1) + " is in the place of cavity barrier " +
                  std::to_string(other + 1),
              "leave one of them out, or give it its place");
      break;
    }
    before.emplace_back(i, *taken);
  }
}

}  // namespace model
