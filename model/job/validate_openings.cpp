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

// Where an opening is along its wall, in the file's direction.
struct Stretch {
  size_t wall = 0;
  double from = 0, to = 0;
};

// An opening with its defaults filled in. What cannot be known, or is wrong by itself, is not set.
struct PlacedOpening {
  size_t index = 0;
  std::optional<size_t> wall;
  std::optional<Stretch> stretch;
  std::optional<double> sill, head;
};

std::string pathOf(size_t index) { return "opening[" + std::to_string(index) + "]"; }

std::string nameOf(const Validation& v, size_t index) {
  const std::string& name = v.job.openings[index].name;
  return name.empty() ? "opening " + std::to_string(index + 1) : "opening \"" + name + "\"";
}

// The wall, by its name alone; with the problem added when there is none of that name.
std::optional<size_t> wallOf(const Validation& v, size_t index) {
  const std::string path = pathOf(index) + ".wall";
  const size_t corners = v.job.outline.size();
  if (!v.known.has("outline.corners") || corners < 3 || !v.known.has(path)) return std::nullopt;
  return knownWall(v, path, nameOf(v, index), v.job.openings[index].wall, corners);
}

// The stretch of the wall, or nothing, with the problem added when it is wrong.
std::optional<Stretch> alongWall(const Validation& v, size_t index, size_t wall,
                                 const PlanFacts& plan) {
  const Opening& opening = v.job.openings[index];
  const std::string path = pathOf(index), who = nameOf(v, index);
  const std::string first = letterOfCorner(wall);
  const std::string second = letterOfCorner((wall + 1) % plan.corners());
  if (!v.known.has(path + ".from")) return std::nullopt;
  if (opening.from != first && opening.from != second) {
    v.error(path + ".from",
            who + ": corner \"" + opening.from.substr(0, 60) + "\" is no end of wall " +
                plan.wallName(wall),
            "write \"" + first + "\" or \"" + second + "\"");
    return std::nullopt;
  }
  if (!v.known.has(path + ".at") || !v.known.has(path + ".width")) return std::nullopt;
  const double length = plan.length[wall];
  const double end = opening.at + opening.width;
  if (end > length + kTolerance) {
    v.error(path + ".at",
            who + " ends " + lengthWords(end) + " from corner " + opening.from + ", past corner " +
                (opening.from == first ? second : first),
            "wall " + plan.wallName(wall) + " is " + lengthWords(length) + " long");
    return std::nullopt;
  }
  const double from = opening.from == first ? opening.at : length - end;
  return Stretch{wall, from, from + opening.width};
}

// The inner face begins further along than the outer where the corner turns inward; an opening
// must leave both leaves something to end on.
bool clearOfCorners(const Validation& v, size_t index, const Stretch& opening,
                    const PlanFacts& plan) {
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
      pathOf(index) + ".at",
      nameOf(v, index) + " is " + lengthWords(tooNearFirst ? before : after) + " from corner " +
          letterOfCorner(corner) + ", inside the wall that meets it there",
      "at least " + lengthWords(std::ceil(needed(corner) * 1000 - 0.001) / 1000) + " is needed");
  return false;
}

// Sill and head, with their defaults; each is left out when it is not known, or when it is far from
// the building, which is then added.
void addHeights(const Validation& v, PlacedOpening& placed) {
  const Opening& opening = v.job.openings[placed.index];
  const std::string path = pathOf(placed.index), who = nameOf(v, placed.index);
  const size_t storey = static_cast<size_t>(opening.storey);
  const bool floor = v.known.has(path + ".storey") && v.known.storeyFloor(storey);
  const double level = floor ? v.job.storeys[storey].floor : 0;
  const double sillAbove = opening.kind == OpeningKind::Window ? 1.050 : 0;
  if (v.known.has(path + ".sill") && (opening.sill || (floor && v.known.has(path + ".kind")))) {
    const double sill = opening.sill.value_or(level + sillAbove);
    if (nearFloor(v, path + ".sill", who + ": sill", sill)) placed.sill = sill;
  }
  if (v.known.has(path + ".head") && (opening.head || floor)) {
    const double head = opening.head.value_or(level + 2.100);
    if (nearFloor(v, path + ".head", who + ": head", head)) placed.head = head;
  }
}

// Sill and head against each other.
bool isHighEnough(const Validation& v, const PlacedOpening& placed) {
  if (!placed.sill || !placed.head || *placed.head >= *placed.sill + kLeastHeight - kTolerance) {
    return true;
  }
  const Opening& opening = v.job.openings[placed.index];
  v.error(pathOf(placed.index) + (opening.head || !opening.sill ? ".head" : ".sill"),
          nameOf(v, placed.index) + ": head " + levelWords(*placed.head) +
              (*placed.head > *placed.sill ? " is only just over" : " is not over") + " sill " +
              levelWords(*placed.sill),
          "an opening is at least 200 mm high; levels are in metres");
  return false;
}

std::string storeyInWords(const Validation& v, size_t storey) {
  return v.known.has("storey[" + std::to_string(storey) + "].name")
             ? "\"" + v.job.storeys[storey].name + "\""
             : "storey " + std::to_string(storey + 1);
}

// False when the opening lies outside its storey.
bool heightsFit(const Validation& v, const PlacedOpening& placed, const LevelFacts& levels) {
  const std::string path = pathOf(placed.index), who = nameOf(v, placed.index);
  if (!v.known.has(path + ".storey")) return true;
  const size_t storey = static_cast<size_t>(v.job.openings[placed.index].storey);
  const std::vector<Storey>& storeys = v.job.storeys;
  if (placed.sill && v.known.storeyFloor(storey) &&
      *placed.sill < storeys[storey].floor - kUnderFloor) {
    v.error(path + ".sill",
            who + ": sill " + levelWords(*placed.sill) + " is far under the floor of " +
                storeyInWords(v, storey) + " at " + levelWords(storeys[storey].floor),
            "at most 600 mm under its floor; is its storey right?");
    return false;
  }
  if (placed.head && v.known.storeyFloor(storey + 1) &&
      *placed.head > storeys[storey + 1].floor + kTolerance) {
    v.error(path + ".head",
            who + ": head " + levelWords(*placed.head) + " is above the floor of " +
                storeyInWords(v, storey + 1) + " at " + levelWords(storeys[storey + 1].floor),
            "keep it within its storey; is its storey right?");
    return false;
  }
  if (placed.sill && storey == 0 && v.known.dampCourse() &&
      *placed.sill < levels.dampCourse - 0.150 - kTolerance) {
    v.warning(path + ".sill",
              who + ": sill " + levelWords(*placed.sill) + " is under the damp course at " +
                  levelWords(levels.dampCourse),
              "give it its own damp course there; is the level right?");
  }
  return true;
}

// The lowest level that concrete may reach under the opening.
void standsOnWall(const Validation& v, const PlacedOpening& placed) {
  if (!placed.sill || !v.known.has("foundations.top") || !v.known.foundationSteps()) return;
  double concrete = v.job.foundations.top.value_or(-1e9);
  for (const FoundationStep& step : v.job.foundations.steps) {
    if (wallNamed(step.wall, v.job.outline.size()) == placed.wall) {
      concrete = std::max(concrete, step.top);
    }
  }
  if (*placed.sill > concrete + 0.05) return;
  v.error(pathOf(placed.index) + ".sill",
          nameOf(v, placed.index) + ": sill " + levelWords(*placed.sill) +
              " is at or under the top of concrete at " + levelWords(concrete),
          "leave at least a course of wall under it");
}

void underTheTop(const Validation& v, const PlacedOpening& placed, const LevelFacts& levels) {
  if (!placed.head || !v.known.outerLeafTop() || !v.known.roofEdges()) return;
  const size_t corners = v.job.outline.size();
  for (const RoofEdge& edge : v.job.roof.edges) {
    // Gables run up to the slope; validateRoof looks at those.
    if (wallNamed(edge.wall, corners) == placed.wall && edge.kind == EavesKind::Gable) return;
  }
  const double most = std::min(levels.wallTop, levels.outerLeafTop);
  if (*placed.head <= most + kTolerance) return;
  const bool rafters = levels.outerLeafTop < levels.wallTop - kTolerance;
  v.error(pathOf(placed.index) + ".head",
          nameOf(v, placed.index) + ": head " + levelWords(*placed.head) + " is above the top of " +
              (rafters ? "the outer leaf, " + levelWords(most) + ", where the rafters come down"
                       : "the wall, " + levelWords(most)),
          rafters ? "lower the head, make walls.top higher or the pitch less"
                  : "lower the head or make walls.top higher");
}

void validatePair(const Validation& v, const PlacedOpening& a, const PlacedOpening& b) {
  if (!a.stretch || !b.stretch || !a.sill || !a.head || !b.sill || !b.head) return;
  if (a.wall != b.wall || *a.sill > *b.head - kTolerance || *b.sill > *a.head - kTolerance) return;
  const double pier =
      std::max(a.stretch->from, b.stretch->from) - std::min(a.stretch->to, b.stretch->to);
  if (pier < 0.010) {
    v.error(pathOf(b.index),
            nameOf(v, b.index) + (pier < -kTolerance ? " overlaps " : " touches ") +
                nameOf(v, a.index) + " in wall " + nameOfWall(*a.wall, v.job.outline.size()),
            "move one of them, or make the two one opening");
  } else if (pier < kShortPier - kTolerance) {
    v.warning(pathOf(b.index),
              "the pier between " + nameOf(v, a.index) + " and " + nameOf(v, b.index) +
                  " is only " + lengthWords(pier),
              "under one brick, 215 mm, it is hard to bond (common practice); the drawing decides");
  }
}

void warnOfShortEndPier(const Validation& v, size_t index, const Stretch& placed,
                        const PlanFacts& plan) {
  const double total = v.job.walls.total();
  const size_t corners[] = {placed.wall, (placed.wall + 1) % plan.corners()};
  const double piers[] = {placed.from, plan.length[placed.wall] - placed.to};
  for (int end = 0; end < 2; ++end) {
    const double inner = piers[end] - total / std::tan(plan.angle[corners[end]] / 2);
    const double least = std::min(piers[end], inner);
    if (least >= 0.1 - kTolerance) continue;
    v.warning(pathOf(index) + ".at",
              "the pier between " + nameOf(v, index) + " and corner " +
                  letterOfCorner(corners[end]) + " is only " + lengthWords(least) +
                  " on its shorter face",
              "it is hard to bond (common practice); the drawing decides");
  }
}

PlacedOpening placed(const Validation& v, size_t index, const std::optional<PlanFacts>& plan,
                     const LevelFacts& levels) {
  PlacedOpening opening;
  opening.index = index;
  opening.wall = wallOf(v, index);
  if (opening.wall && plan) opening.stretch = alongWall(v, index, *opening.wall, *plan);
  addHeights(v, opening);
  if (opening.stretch && v.known.wallThickness() &&
      clearOfCorners(v, index, *opening.stretch, *plan)) {
    warnOfShortEndPier(v, index, *opening.stretch, *plan);
  }
  if (isHighEnough(v, opening) && heightsFit(v, opening, levels) && opening.wall) {
    standsOnWall(v, opening);
    underTheTop(v, opening, levels);
  }
  return opening;
}

}  // namespace

void validateOpenings(const Validation& v, const std::optional<PlanFacts>& plan,
                      const LevelFacts& levels) {
  std::vector<PlacedOpening> before;
  for (size_t i = 0; i < v.job.openings.size(); ++i) {
    if (!v.known.has(pathOf(i))) continue;
    const int storey = v.job.openings[i].storey;
    if (storey < 0 || static_cast<size_t>(storey) >= v.job.storeys.size()) {
      if (v.job.storeys.empty()) continue;  // that there is none has its own message
      v.error(pathOf(i) + ".storey", nameOf(v, i) + " belongs to no storey",
              "name one of the storeys");
      continue;
    }
    const PlacedOpening opening = placed(v, i, plan, levels);
    for (const PlacedOpening& other : before) validatePair(v, other, opening);
    before.push_back(opening);
  }
}

}  // namespace model
