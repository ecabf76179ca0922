// Openings in their walls, among each other, and under floors and roof.
#include <algorithm>
#include <cmath>

#include "model/job/job_names.h"
#include "model/job/validate.h"
#include "model/job/value_words.h"

namespace model {

namespace {

constexpr double kTolerance = 1e-6;
constexpr double kLeastHeight = 0.2;  // metres, sill to head
constexpr double kShortPier = 0.215;  // metres, one brick long; common practice, no source
constexpr double kUnderFloor = 0.6;   // metres a sill may lie under its storey's floor

// An opening with its defaults filled in, measured along its wall in the file's direction.
struct PlacedOpening {
  size_t index = 0;
  size_t wall = 0;
  double from = 0, to = 0;
  double sill = 0, head = 0;
};

std::string pathOf(size_t index) { return "opening[" + std::to_string(index) + "]"; }

std::string nameOf(const Validation& v, size_t index) {
  const std::string& name = v.job.openings[index].name;
  return name.empty() ? "opening " + std::to_string(index + 1) : "opening \"" + name + "\"";
}

// The wall and the stretch of it, or nothing with the problem added.
std::optional<PlacedOpening> alongWall(const Validation& v, size_t index, const PlanFacts& plan) {
  const Opening& opening = v.job.openings[index];
  const std::string path = pathOf(index), who = nameOf(v, index);
  const auto wall = knownWall(v, path + ".wall", who, opening.wall, plan.corners());
  if (!wall) return std::nullopt;
  const std::string first = letterOfCorner(*wall);
  const std::string second = letterOfCorner((*wall + 1) % plan.corners());
  if (opening.from != first && opening.from != second) {
    v.error(path + ".from",
            who + ": corner \"" + opening.from.substr(0, 60) + "\" is no end of wall " +
                plan.wallName(*wall),
            "write \"" + first + "\" or \"" + second + "\"");
    return std::nullopt;
  }
  const double length = plan.length[*wall];
  const double end = opening.at + opening.width;
  if (end > length + kTolerance) {
    v.error(path + ".at",
            who + " ends " + lengthWords(end) + " from corner " + opening.from + ", past corner " +
                (opening.from == first ? second : first),
            "wall " + plan.wallName(*wall) + " is " + lengthWords(length) + " long");
    return std::nullopt;
  }
  const bool forward = opening.from == first;
  const double from = forward ? opening.at : length - end;
  return PlacedOpening{index, *wall, from, from + opening.width, 0, 0};
}

// The inner face begins further along than the outer where the corner turns inward; an opening
// must leave both leaves something to end on.
bool clearOfCorners(const Validation& v, const PlacedOpening& opening, const PlanFacts& plan) {
  const size_t next = (opening.wall + 1) % plan.corners();
  const double total = v.job.walls.total();
  const auto needed = [&](size_t corner) {
    return std::max(0.0, total / std::tan(plan.angle[corner] / 2)) + 0.001;
  };
  const double before = opening.from, after = plan.length[opening.wall] - opening.to;
  const bool tooNearFirst = before < needed(opening.wall) - kTolerance;
  const bool tooNearSecond = after < needed(next) - kTolerance;
  if (!tooNearFirst && !tooNearSecond) return true;
  const size_t corner = tooNearFirst ? opening.wall : next;
  v.error(
      pathOf(opening.index) + ".at",
      nameOf(v, opening.index) + " is " + lengthWords(tooNearFirst ? before : after) +
          " from corner " + letterOfCorner(corner) + ", inside the wall that meets it there",
      "at least " + lengthWords(std::ceil(needed(corner) * 1000 - 0.001) / 1000) + " is needed");
  return false;
}

// Sill and head, with their defaults.
void addHeights(const Job& job, PlacedOpening& placed) {
  const Opening& opening = job.openings[placed.index];
  const double floor = job.storeys[static_cast<size_t>(opening.storey)].floor;
  const double sillAbove = opening.kind == OpeningKind::Window ? 1.050 : 0;
  placed.sill = opening.sill.value_or(floor + sillAbove);
  placed.head = opening.head.value_or(floor + 2.100);
}

bool heightsFit(const Validation& v, const PlacedOpening& placed, const LevelFacts& levels) {
  const Opening& opening = v.job.openings[placed.index];
  const std::string path = pathOf(placed.index), who = nameOf(v, placed.index);
  const size_t storey = static_cast<size_t>(opening.storey);
  const double floor = v.job.storeys[storey].floor;
  if (!nearFloor(v, path + ".sill", who + ": sill", placed.sill) ||
      !nearFloor(v, path + ".head", who + ": head", placed.head)) {
    return false;
  }
  if (placed.head < placed.sill + kLeastHeight - kTolerance) {
    v.error(path + (opening.head || !opening.sill ? ".head" : ".sill"),
            who + ": head " + levelWords(placed.head) +
                (placed.head > placed.sill ? " is only just over" : " is not over") + " sill " +
                levelWords(placed.sill),
            "an opening is at least 200 mm high; levels are in metres");
    return false;
  }
  if (placed.sill < floor - kUnderFloor) {
    v.error(path + ".sill",
            who + ": sill " + levelWords(placed.sill) + " is far under the floor of \"" +
                v.job.storeys[storey].name + "\" at " + levelWords(floor),
            "at most 600 mm under its floor; is its storey right?");
    return false;
  }
  if (storey + 1 < v.job.storeys.size() &&
      placed.head > v.job.storeys[storey + 1].floor + kTolerance) {
    v.error(path + ".head",
            who + ": head " + levelWords(placed.head) + " is above the floor of \"" +
                v.job.storeys[storey + 1].name + "\" at " +
                levelWords(v.job.storeys[storey + 1].floor),
            "keep it within its storey; is its storey right?");
    return false;
  }
  if (storey == 0 && placed.sill < levels.dampCourse - 0.150 - kTolerance) {
    v.warning(path + ".sill",
              who + ": sill " + levelWords(placed.sill) + " is under the damp course at " +
                  levelWords(levels.dampCourse),
              "give it its own damp course there; is the level right?");
  }
  return true;
}

// The lowest level that concrete may reach under the opening.
bool standsOnWall(const Validation& v, const PlacedOpening& placed) {
  double concrete = v.job.foundations.top.value_or(-1e9);
  for (const FoundationStep& step : v.job.foundations.steps) {
    if (wallNamed(step.wall, v.job.outline.size()) == placed.wall) {
      concrete = std::max(concrete, step.top);
    }
  }
  if (placed.sill > concrete + 0.05) return true;
  v.error(pathOf(placed.index) + ".sill",
          nameOf(v, placed.index) + ": sill " + levelWords(placed.sill) +
              " is at or under the top of concrete at " + levelWords(concrete),
          "leave at least a course of wall under it");
  return false;
}

bool underTheTop(const Validation& v, const PlacedOpening& placed, const LevelFacts& levels) {
  const size_t corners = v.job.outline.size();
  for (const RoofEdge& edge : v.job.roof.edges) {
    // Gables run up to the slope; validateRoof looks at those.
    if (wallNamed(edge.wall, corners) == placed.wall && edge.kind == EavesKind::Gable) return true;
  }
  const double most = std::min(levels.wallTop, levels.outerLeafTop);
  if (placed.head <= most + kTolerance) return true;
  const bool rafters = levels.outerLeafTop < levels.wallTop - kTolerance;
  v.error(pathOf(placed.index) + ".head",
          nameOf(v, placed.index) + ": head " + levelWords(placed.head) + " is above the top of " +
              (rafters ? "the outer leaf, " + levelWords(most) + ", where the rafters come down"
                       : "the wall, " + levelWords(most)),
          rafters ? "lower the head, make walls.top higher or the pitch less"
                  : "lower the head or make walls.top higher");
  return false;
}

void validatePair(const Validation& v, const PlacedOpening& a, const PlacedOpening& b) {
  if (a.wall != b.wall || a.sill > b.head - kTolerance || b.sill > a.head - kTolerance) return;
  const double pier = std::max(a.from, b.from) - std::min(a.to, b.to);
  if (pier < 0.010) {
    v.error(pathOf(b.index),
            nameOf(v, b.index) + (pier < -kTolerance ? " overlaps " : " touches ") +
                nameOf(v, a.index) + " in wall " + nameOfWall(a.wall, v.job.outline.size()),
            "move one of them, or make the two one opening");
  } else if (pier < kShortPier - kTolerance) {
    v.warning(pathOf(b.index),
              "the pier between " + nameOf(v, a.index) + " and " + nameOf(v, b.index) +
                  " is only " + lengthWords(pier),
              "under one brick, 215 mm, it is hard to bond (common practice); the drawing decides");
  }
}

void warnOfShortEndPier(const Validation& v, const PlacedOpening& placed, const PlanFacts& plan) {
  const double total = v.job.walls.total();
  const size_t corners[] = {placed.wall, (placed.wall + 1) % plan.corners()};
  const double piers[] = {placed.from, plan.length[placed.wall] - placed.to};
  for (int end = 0; end < 2; ++end) {
    const double inner = piers[end] - total / std::tan(plan.angle[corners[end]] / 2);
    const double least = std::min(piers[end], inner);
    if (least >= 0.1 - kTolerance) continue;
    v.warning(pathOf(placed.index) + ".at",
              "the pier between " + nameOf(v, placed.index) + " and corner " +
                  letterOfCorner(corners[end]) + " is only " + lengthWords(least) +
                  " on its shorter face",
              "it is hard to bond (common practice); the drawing decides");
  }
}

}  // namespace

void validateOpenings(const Validation& v, const PlanFacts& plan, const LevelFacts& levels) {
  if (!v.readable("walls") || !v.readable("storey") || !v.readable("opening")) return;
  for (size_t i = 0; i < v.job.storeys.size(); ++i) {
    if (!v.readable("storey[" + std::to_string(i) + "]")) return;
  }
  std::vector<PlacedOpening> placed;
  for (size_t i = 0; i < v.job.openings.size(); ++i) {
    if (!v.readable(pathOf(i))) continue;
    const int storey = v.job.openings[i].storey;
    if (storey < 0 || static_cast<size_t>(storey) >= v.job.storeys.size()) {
      v.error(pathOf(i) + ".storey", nameOf(v, i) + " belongs to no storey",
              "name one of the storeys");
      continue;
    }
    auto opening = alongWall(v, i, plan);
    if (!opening) continue;
    addHeights(v.job, *opening);
    const bool clear = clearOfCorners(v, *opening, plan);
    const bool fits = heightsFit(v, *opening, levels);
    if (fits && v.readable("foundations")) standsOnWall(v, *opening);
    if (fits && v.readable("roof")) underTheTop(v, *opening, levels);
    if (clear) warnOfShortEndPier(v, *opening, plan);
    for (const PlacedOpening& other : placed) validatePair(v, other, *opening);
    placed.push_back(*opening);
  }
}

}  // namespace model
