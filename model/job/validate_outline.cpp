// Outlines on their own, and the plan with the walls that stand on it.
#include <algorithm>
#include <cmath>

#include "model/job/job_names.h"
#include "model/job/lengths.h"
#include "model/job/validate.h"
#include "model/job/validate_parapets.h"
#include "model/job/value_words.h"

namespace model {

namespace {

constexpr double kPi = 3.14159265358979323846;
constexpr double kSamePoint = 0.001;  // metres: corners nearer than this are one
constexpr double kLeastAcross = 0.5;  // metres: anything smaller was given in metres
constexpr double kLongestWall = 200;  // metres
constexpr double kLeastAngle = 30;    // degrees, inside or outside
constexpr double kLeastRoom = 0.3;    // metres of clear inner face at least

double distance(const Vec2& a, const Vec2& b) { return std::hypot(a.x - b.x, a.y - b.y); }

Vec2 extent(const Outline& outline) {
  Vec2 low = outline[0], high = outline[0];
  for (const Vec2& p : outline) {
    low = {std::min(low.x, p.x), std::min(low.y, p.y)};
    high = {std::max(high.x, p.x), std::max(high.y, p.y)};
  }
  return high - low;
}

std::string at(const std::string& path, size_t index) {
  return path + "[" + std::to_string(index) + "]";
}

bool hasRepeatedCorner(const Validation& v, const Outline& outline, const std::string& path,
                       const std::function<std::string(size_t)>& cornerName) {
  for (size_t j = 1; j < outline.size(); ++j) {
    for (size_t i = 0; i < j; ++i) {
      if (distance(outline[i], outline[j]) > kSamePoint) continue;
      const bool closes = i == 0 && j + 1 == outline.size();
      v.error(at(path, j), cornerName(j) + " stands on " + cornerName(i),
              closes ? "leave the last one out; the outline closes by itself"
                     : "give each corner once");
      return true;
    }
  }
  return false;
}

// All corners within a tenth of a millimetre of one line.
bool isFlat(const Outline& outline) {
  size_t far = 0;
  for (size_t i = 1; i < outline.size(); ++i) {
    if (distance(outline[i], outline[0]) > distance(outline[far], outline[0])) far = i;
  }
  const Vec2 line = outline[far] - outline[0];
  for (const Vec2& p : outline) {
    if (std::abs(cross(line, p - outline[0])) > 1e-4 * std::hypot(line.x, line.y)) return false;
  }
  return true;
}

// How much shorter an edge is at `inward` metres inside the outline.
double shortening(double angleA, double angleB, double inward) {
  return inward * (1 / std::tan(angleA / 2) + 1 / std::tan(angleB / 2));
}

PlanFacts factsOf(const Outline& outline) {
  PlanFacts plan;
  const size_t n = outline.size();
  plan.outline = outline;
  const bool clockwise = signedArea(outline) < 0;
  if (clockwise) std::reverse(plan.outline.begin(), plan.outline.end());
  plan.edgeOfWall.resize(n);
  for (size_t i = 0; i < n; ++i) {
    const Vec2 before = outline[i] - outline[(i + n - 1) % n];
    const Vec2 after = outline[(i + 1) % n] - outline[i];
    const double turn = std::atan2(cross(before, after), before.x * after.x + before.y * after.y);
    plan.angle.push_back(kPi - (clockwise ? -turn : turn));
    plan.length.push_back(distance(outline[i], outline[(i + 1) % n]));
    // Point k of the reversed outline is corner n-1-k, so that edge k is wall n-2-k.
    plan.wallOfEdge.push_back(clockwise ? (2 * n - 2 - i) % n : i);
  }
  for (size_t edge = 0; edge < n; ++edge) plan.edgeOfWall[plan.wallOfEdge[edge]] = edge;
  return plan;
}

bool cornersAreOpenEnough(const Validation& v, const PlanFacts& plan) {
  bool good = true;
  for (size_t i = 0; i < plan.corners(); ++i) {
    const double degrees = plan.angle[i] * 180 / kPi;
    const bool inside = degrees < kLeastAngle;
    if (!inside && degrees <= 360 - kLeastAngle) continue;
    const int shown = static_cast<int>(std::lround(inside ? degrees : 360 - degrees));
    v.error(at("outline.corners", i),
            "corner " + letterOfCorner(i) + " is only " + std::to_string(shown) + " degrees " +
                (inside ? "inside" : "outside"),
            "walls can be built round corners of 30 degrees and more");
    good = false;
  }
  return good;
}

bool wallsAreNotEndless(const Validation& v, const PlanFacts& plan) {
  for (size_t i = 0; i < plan.corners(); ++i) {
    if (plan.length[i] <= kLongestWall) continue;
    v.error(at("outline.corners", (i + 1) % plan.corners()),
            "wall " + plan.wallName(i) + " is " + lengthWords(plan.length[i]) + " long",
            "200 m is the longest; corners are in mm");
    return false;
  }
  return true;
}

}  // namespace

bool soundOutline(const Validation& v, const Outline& outline, const std::string& path,
                  const std::string& who, const std::function<std::string(size_t)>& cornerName) {
  if (outline.size() < 3) {
    v.error(path, who + " has " + std::to_string(outline.size()) + " corners",
            "at least 3 are needed");
    return false;
  }
  const Vec2 across = extent(outline);
  const double most = std::max(across.x, across.y);
  if (most < kLeastAcross && most > 0) {
    const double meant = std::round(most * 1e6) / 1e3;  // metres given for millimetres
    v.error(
        path, who + " is only " + lengthWords(most) + " across",
        "points are in mm; for " + numberValueText(meant) + " m write " + lengthValueText(meant));
    return false;
  }
  if (hasRepeatedCorner(v, outline, path, cornerName)) return false;
  if (isFlat(outline)) {
    v.error(path, who + " has no area", "its corners must not all be in one line");
    return false;
  }
  if (const auto edges = crossingEdges(outline)) {
    const auto side = [&](size_t i) {
      return cornerName(i) + " to " + cornerName((i + 1) % outline.size());
    };
    v.error(at(path, (*edges)[1]),
            who + " crosses itself: " + side((*edges)[0]) + " meets " + side((*edges)[1]),
            "give the corners in order round the outline");
    return false;
  }
  return true;
}

std::optional<PlanFacts> validateOutline(const Validation& v) {
  if (!v.known.has("outline.corners")) return std::nullopt;
  const auto named = [](size_t i) { return "corner " + letterOfCorner(i); };
  if (!soundOutline(v, v.job.outline, "outline.corners", "the outline", named)) {
    return std::nullopt;
  }
  PlanFacts plan = factsOf(v.job.outline);
  const bool open = cornersAreOpenEnough(v, plan);
  if (!wallsAreNotEndless(v, plan) || !open) return std::nullopt;
  return plan;
}

namespace {

// Both leaves, the foundations and the eaves are parallels of the outline; each must still be a
// plan. `inward` is by edge of the outline. False with the problem added.
bool parallelFits(const Validation& v, const PlanFacts& plan, const std::vector<double>& inward,
                  double leastLength, const std::string& what, const std::string& instead) {
  const size_t n = plan.corners();
  for (size_t edge = 0; edge < n; ++edge) {
    const size_t wall = plan.wallOfEdge[edge];
    const double left =
        plan.length[wall] - shortening(plan.angle[wall], plan.angle[(wall + 1) % n], inward[edge]);
    if (left >= leastLength - 1e-9) continue;
    v.error(at("outline.corners", (wall + 1) % n),
            "wall " + plan.wallName(wall) + " is " + lengthWords(plan.length[wall]) +
                " long, too short for " + what,
            instead);
    return false;
  }
  const auto meeting = crossingEdges(offsetMitred(plan.outline, inward));
  if (!meeting) return true;
  const size_t a = plan.wallOfEdge[(*meeting)[0]], b = plan.wallOfEdge[(*meeting)[1]];
  v.error(at("outline.corners", std::max(a, b)),
          "walls " + plan.wallName(std::min(a, b)) + " and " + plan.wallName(std::max(a, b)) +
              " are too near each other for " + what,
          instead);
  return false;
}

bool isGable(const Job& job, const PlanFacts& plan, size_t wall) {
  for (const RoofEdge& edge : job.roof.edges) {
    if (wallNamed(edge.wall, plan.corners()) == wall) return edge.kind == EavesKind::Gable;
  }
  return false;
}

// The overhangs by edge. Walls in line can only have one; where they differ the roof is refused
// for it, and the greater serves here.
std::vector<double> overhangs(const Job& job, const PlanFacts& plan) {
  std::vector<double> outward;
  for (size_t edge = 0; edge < plan.corners(); ++edge) {
    const size_t wall = plan.wallOfEdge[edge];
    outward.push_back(hasParapet(job, wall, plan.corners()) ? job.walls.total()
                      : isGable(job, plan, wall)            ? -job.roof.verge
                                                            : -job.roof.eaves);
  }
  for (size_t corner = 0; corner < plan.corners(); ++corner) {
    if (std::abs(plan.angle[corner] - kPi) > 1e-6) continue;
    const double most = -std::max(job.roof.verge, job.roof.eaves);
    for (double& distance : outward) distance = most;
    break;
  }
  return outward;
}

}  // namespace

void validateWalls(const Validation& v, const PlanFacts& plan) {
  const Job& job = v.job;
  const size_t n = plan.corners();
  const double total = job.walls.total();
  const std::string build = "walls of " + lengthWords(total);
  if (v.known.wallThickness() &&
      !parallelFits(v, plan, std::vector<double>(n, total), kLeastRoom, build,
                    "move the corners apart or make the walls thinner")) {
    return;
  }
  if (v.known.wallThickness() && v.known.has("foundations.width") &&
      job.foundations.width > total) {
    const double project = (job.foundations.width - total) / 2;
    const std::string strip = "foundations of " + lengthWords(job.foundations.width);
    const std::string instead = "move the corners apart or make the foundations narrower";
    if (!parallelFits(v, plan, std::vector<double>(n, total + project), 0.05, strip, instead) ||
        !parallelFits(v, plan, std::vector<double>(n, -project), 0.05, strip, instead)) {
      return;
    }
  }
  if (v.known.roofEdges() && v.known.has({"roof.verge", "roof.eaves"})) {
    parallelFits(v, plan, overhangs(job, plan), 0.05, "the eaves",
                 "move the corners apart or make the overhang less");
  }
}

}  // namespace model
