// The cellar inside the plan, under the floor and within the site.
#include <algorithm>
#include <cmath>

#include "model/job/job_names.h"
#include "model/job/validate.h"
#include "model/job/value_words.h"

namespace model {

namespace {

constexpr double kOnLine = 0.001;       // metres
constexpr double kLeastHeadroom = 1.2;  // metres, finished floor to underside of the floor over it
constexpr double kDeepest = 12;         // metres under the ground floor
constexpr double kLeastRoom = 0.5;      // metres inside the walls
constexpr double kTolerance = 1e-6;
// Common practice, no source: the least that concrete goes between leaves in, and the widths that
// hollow blocks are made in.
constexpr double kLeastCore = 0.050, kLeastHollow = 0.140, kMostHollow = 0.400;

double length(const Vec2& a) { return std::hypot(a.x, a.y); }
double dot(const Vec2& a, const Vec2& b) { return a.x * b.x + a.y * b.y; }

double distanceToLine(const Vec2& p, const Vec2& a, const Vec2& b) {
  return std::abs(cross(b - a, p - a)) / length(b - a);
}

// True when both ends of the side stand on the wall's outer face.
bool runsAlong(const Vec2& a, const Vec2& b, const Vec2& wallA, const Vec2& wallB) {
  return distanceToLine(a, wallA, wallB) <= kOnLine && distanceToLine(b, wallA, wallB) <= kOnLine;
}

// How much of the side lies in the figure, metres.
double lengthInside(const Vec2& a, const Vec2& b, const Polygon& convex) {
  double from = 0, to = 1;
  for (size_t i = 0; i < convex.size(); ++i) {
    const Vec2 &p = convex[i], &q = convex[(i + 1) % convex.size()];
    const double sideA = cross(q - p, a - p), sideB = cross(q - p, b - p);
    if (sideA < 0 && sideB < 0) return 0;
    if (sideA < 0) from = std::max(from, sideA / (sideA - sideB));
    if (sideB < 0) to = std::min(to, sideA / (sideA - sideB));
  }
  return std::max(0.0, to - from) * length(b - a);
}

Polygon cellarOutline(const Job& job, const PlanFacts& plan) {
  if (job.cellar->outline.empty()) return plan.outline;
  Polygon outline = job.cellar->outline;
  if (signedArea(outline) < 0) std::reverse(outline.begin(), outline.end());
  return outline;
}

bool liesInThePlan(const Validation& v, const Polygon& cellar, const PlanFacts& plan) {
  // A hair's breadth outside is rounding on the drawing.
  const Polygon grown = offsetMitred(plan.outline, -kOnLine);
  if (area(subtract({{cellar, {}}}, {{grown, {}}})) < 1e-4) return true;
  v.error("cellar.outline", "the cellar goes beyond the outer face of the walls over it",
          "keep its outline inside that of the building");
  return false;
}

// A side of the cellar either carries the wall over it or stays clear of it inside.
void keepsClearOfWalls(const Validation& v, const Polygon& cellar, const PlanFacts& plan) {
  if (v.job.cellar->outline.empty() || !v.known.wallThickness()) return;
  const double total = v.job.walls.total();
  const Polygon inner = offsetMitred(plan.outline, total);
  for (size_t i = 0; i < cellar.size(); ++i) {
    const Vec2 &a = cellar[i], &b = cellar[(i + 1) % cellar.size()];
    for (size_t edge = 0; edge < plan.corners(); ++edge) {
      const size_t next = (edge + 1) % plan.corners();
      const Vec2 &p = plan.outline[edge], &q = plan.outline[next];
      if (runsAlong(a, b, p, q)) continue;
      const double slant = std::abs(dot(b - a, q - p)) / (length(b - a) * length(q - p));
      if (slant < 0.72) continue;  // it crosses under the wall, at about 45 degrees or more
      if (lengthInside(a, b, {p, q, inner[next], inner[edge]}) < kOnLine) continue;
      v.error("cellar.outline",
              "a side of the cellar runs under wall " + plan.wallName(plan.wallOfEdge[edge]) +
                  " but not along its outer face",
              "put it on the outer face, or at least " + lengthWords(total) + " inside it");
      return;
    }
  }
}

bool hasRoomInside(const Validation& v, const Polygon& cellar) {
  if (!v.known.has("cellar.wall")) return true;
  const double wall = v.job.cellar->wall;
  const Polygon room = offsetMitred(cellar, wall);
  bool fits = !crossingEdges(room) && signedArea(room) > 0;
  for (size_t i = 0; fits && i < cellar.size(); ++i) {
    const size_t next = (i + 1) % cellar.size();
    const Vec2 before = cellar[next] - cellar[i], after = room[next] - room[i];
    fits = dot(before, after) > 0 && length(after) >= kLeastRoom;
  }
  if (!fits) {
    v.error("cellar.outline", "the cellar leaves no room inside walls of " + lengthWords(wall),
            "move its sides apart or make its walls thinner");
  }
  return fits;
}

void validateDepth(const Validation& v, const LevelFacts& levels) {
  if (!v.known.has("cellar.floor") || !v.known.slabUnderside()) return;
  const Cellar& cellar = *v.job.cellar;
  const double headroom = levels.slabUnderside - cellar.floor;
  if (headroom < kLeastHeadroom) {
    v.error("cellar.floor",
            "cellar.floor is " + levelWords(cellar.floor) +
                (headroom <= 0 ? ", above " : ", only " + lengthWords(headroom) + " under ") +
                "the underside of the ground floor",
            "at " + levelWords(levels.slabUnderside - kLeastHeadroom) + " or lower it is a cellar");
  } else if (cellar.floor < levels.floor - kDeepest) {
    v.error("cellar.floor", "cellar.floor is " + levelWords(cellar.floor),
            "levels are in metres; 12 m under the floor is the deepest");
  }
}

void validateThickness(const Validation& v) {
  if (!v.known.has("cellar.wall") || !v.known.wallThickness()) return;
  const Cellar& cellar = *v.job.cellar;
  if (cellar.wall < v.job.walls.total() - kTolerance) {
    v.error("cellar.wall",
            "cellar.wall is " + lengthWords(cellar.wall) + " under a wall of " +
                lengthWords(v.job.walls.total()),
            "it is at least as thick as the wall on it");
  }
}

// Walls that are laid: room for concrete between the leaves; blocks as they are made.
void validateBlockwork(const Validation& v) {
  const Cellar& cellar = *v.job.cellar;
  if (cellar.kind == CellarWallKind::FilledCavity && v.known.has({"cellar.wall", "cellar.leaf"})) {
    const double room = cellar.wall - 2 * cellar.leaf;
    if (room < kLeastCore - kTolerance) {
      v.error("cellar.leaf",
              "two leaves of " + lengthWords(cellar.leaf) + " leave " +
                  (room < kTolerance ? "nothing" : "only " + lengthWords(room)) +
                  " for the concrete between them in walls of " + lengthWords(cellar.wall),
              "at least " + lengthWords(kLeastCore) + ": leaves of at most " +
                  lengthWords((cellar.wall - kLeastCore) / 2) + ", or thicker walls");
    }
  }
  if (cellar.kind == CellarWallKind::HollowBlock && v.known.has("cellar.wall") &&
      (cellar.wall < kLeastHollow - kTolerance || cellar.wall > kMostHollow + kTolerance)) {
    v.error("cellar.wall",
            "cellar.wall is " + lengthWords(cellar.wall) + ", and it is one hollow block thick",
            "hollow blocks are " + lengthWords(kLeastHollow) + " to " + lengthWords(kMostHollow) +
                " wide; thicker walls are \"filled-cavity\" or \"concrete\"");
  }
}

// The lowest top of concrete of the walls that do not stand on the cellar; about, when the job
// leaves it to be worked out from the ground.
double lowestConcrete(const Job& job, const LevelFacts& levels) {
  const Foundations& f = job.foundations;
  // The ground may fall a little further than the nearest spot levels.
  constexpr double kUnsure = 0.3;
  const bool strip = f.kind == FoundationKind::Strip;
  const double bearing = levels.lowestGround - job.ground.goodGround +
                         (strip ? f.blinding + f.thickness.value_or(0.2) : 0);
  double lowest = f.top.value_or(strip ? bearing - kUnsure : levels.lowestGround - 0.15 - kUnsure);
  for (const FoundationStep& step : f.steps) lowest = std::min(lowest, step.top);
  return lowest;
}

// Beside a cellar that is not under all of the plan, walls that went deeper than its slab would
// stand in the cellar's own ground.
void staysBelowFoundations(const Validation& v, const Polygon& cellar, const PlanFacts& plan,
                           const LevelFacts& levels) {
  if (!v.known.has({"cellar.floor", "cellar.make_up"}) || !v.known.lowestConcrete()) return;
  if (signedArea(plan.outline) - signedArea(cellar) < 0.01) return;
  const double slabTop = v.job.cellar->floor - v.job.cellar->makeUp;
  const double concrete = lowestConcrete(v.job, levels);
  if (concrete >= slabTop) return;
  v.error("cellar.floor",
          "the foundations beside the cellar go down to " +
              std::string(v.job.foundations.top ? "" : "about ") + levelWords(concrete) +
              ", under the top of its slab at " + levelWords(slabTop),
          "put the cellar deeper or the top of concrete higher");
}

}  // namespace

void validateCellar(const Validation& v, const std::optional<PlanFacts>& plan,
                    const LevelFacts& levels) {
  if (!v.job.cellar || !v.known.has("cellar")) return;
  validateDepth(v, levels);
  validateThickness(v);
  validateBlockwork(v);
  const auto named = [](size_t i) { return "point " + std::to_string(i + 1); };
  if (!v.known.has("cellar.outline")) return;
  if (!v.job.cellar->outline.empty() &&
      !soundOutline(v, v.job.cellar->outline, "cellar.outline", "the cellar", named)) {
    return;
  }
  if (!plan) return;
  const Polygon cellar = cellarOutline(v.job, *plan);
  if (!liesInThePlan(v, cellar, *plan)) return;
  if (!hasRoomInside(v, cellar)) return;
  staysBelowFoundations(v, cellar, *plan, levels);
  keepsClearOfWalls(v, cellar, *plan);
  validateCellarDig(v, cellar);
}

}  // namespace model
