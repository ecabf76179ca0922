// The roof: which walls are gables, and what stands under its slopes.
#include <algorithm>
#include <cmath>
#include <set>

#include "model/geometry/skeleton.h"
#include "model/job/job_names.h"
#include "model/job/validate.h"
#include "model/job/validate_parapets.h"
#include "model/job/value_words.h"

namespace model {

namespace {
constexpr double kPi = 3.14159265358979323846;
constexpr double kInLine = 1e-4;  // radians
constexpr double kTolerance = 1e-6;

std::string edgePath(size_t index) { return "roof.edge[" + std::to_string(index) + "]"; }

// Which walls are gables, or nothing with the problems added.
std::optional<std::vector<bool>> gables(const Validation& v, const PlanFacts& plan) {
  const std::vector<RoofEdge>& edges = v.job.roof.edges;
  std::vector<bool> gable(plan.corners());
  std::set<size_t> named;
  bool good = true;
  for (size_t i = 0; i < edges.size(); ++i) {
    if (!v.known.has(edgePath(i) + ".wall")) {
      good = false;
      continue;
    }
    const auto wall = knownWall(v, edgePath(i) + ".wall", "roof edge " + std::to_string(i + 1),
                                edges[i].wall, plan.corners());
    if (!wall) {
      good = false;
    } else if (!named.insert(*wall).second) {
      v.error(edgePath(i) + ".wall", "wall " + plan.wallName(*wall) + " has two roof edges",
              "say once what the roof does there");
      good = false;
    } else if (!v.known.has(edgePath(i) + ".kind")) {
      good = false;
    } else {
      gable[*wall] = edges[i].kind == EavesKind::Gable;
    }
  }
  if (!good || !v.known.roofEdges()) return std::nullopt;
  return gable;
}

// The first entry that makes this wall a gable, for the place of a message.
std::string pathOfGable(const Validation& v, const PlanFacts& plan, size_t wall) {
  for (size_t i = 0; i < v.job.roof.edges.size(); ++i) {
    if (wallNamed(v.job.roof.edges[i].wall, plan.corners()) == wall) return edgePath(i) + ".kind";
  }
  return "roof";
}

bool gablesCanBe(const Validation& v, const PlanFacts& plan, const std::vector<bool>& gable) {
  if (std::all_of(gable.begin(), gable.end(), [](bool is) { return is; })) {
    v.error("roof.edge", "every wall is a gable", "at least one wall carries a slope");
    return false;
  }
  for (size_t wall = 0; wall < plan.corners(); ++wall) {
    const size_t next = (wall + 1) % plan.corners();
    const bool inLine = std::abs(plan.angle[next] - kPi) < kInLine;
    if (!inLine || gable[wall] == gable[next]) continue;
    v.error(pathOfGable(v, plan, gable[wall] ? wall : next),
            "walls " + plan.wallName(wall) + " and " + plan.wallName(next) +
                " are in line, and only one of them is a gable",
            "walls in line have the same roof edge");
    return false;
  }
  return true;
}

// "{0}" and so on in the skeleton's refusal become the walls' names.
std::string withWalls(std::string text, const PlanFacts& plan, const std::vector<size_t>& edges) {
  for (size_t k = 0; k < edges.size(); ++k) {
    const std::string mark = "{" + std::to_string(k) + "}";
    const std::string name = plan.wallName(plan.wallOfEdge[edges[k]]);
    for (size_t at = text.find(mark); at != std::string::npos; at = text.find(mark, at)) {
      text.replace(at, mark.size(), name);
    }
  }
  return text;
}

struct RoofPlan {
  Skeleton skeleton;
  Polygon eaves;
};

std::optional<RoofPlan> roofPlan(const Validation& v, const PlanFacts& plan,
                                 const std::vector<bool>& gable) {
  std::vector<double> inward;
  std::vector<bool> byEdge;
  size_t firstGable = plan.corners();
  for (size_t edge = 0; edge < plan.corners(); ++edge) {
    const size_t wall = plan.wallOfEdge[edge];
    byEdge.push_back(gable[wall]);
    inward.push_back(hasParapet(v.job, wall, plan.corners()) ? v.job.walls.total()
                     : gable[wall]                           ? -v.job.roof.verge
                                                             : -v.job.roof.eaves);
    if (gable[wall]) firstGable = std::min(firstGable, wall);
  }
  const Polygon eaves = offsetMitred(plan.outline, inward);
  if (crossingEdges(eaves)) return std::nullopt;  // validateWalls says so
  const SkeletonResult result = roofSkeleton(eaves, byEdge);
  if (result.skeleton) return RoofPlan{*result.skeleton, eaves};
  v.error(firstGable < plan.corners() ? pathOfGable(v, plan, firstGable) : "roof",
          "no roof can be made: " + withWalls(result.refusal, plan, result.edges),
          firstGable < plan.corners() ? "make the gable a hip, or gable another wall"
                                      : "simplify the outline");
  return std::nullopt;
}

// The underside of the rafters over a point, above the level they have at the outer face.
double rise(const RoofPlan& roof, const PlanFacts& plan, const Vec2& p, double tanPitch) {
  double least = 1e300;
  for (const RoofFace& face : roof.skeleton.faces) {
    if (!contains(face.plan, p, kTolerance)) continue;
    const Vec2 a = plan.outline[face.edge], b = plan.outline[(face.edge + 1) % plan.corners()];
    least = std::min(least, cross(b - a, p - a) / std::hypot(b.x - a.x, b.y - a.y) * tanPitch);
  }
  return least;
}

// All that is needed to say where its head is.
bool knowsOpening(const Validation& v, size_t index) {
  const std::string path = "opening[" + std::to_string(index) + "].";
  for (const char* key : {"wall", "from", "at", "width", "head"}) {
    if (!v.known.has(path + key)) return false;
  }
  const Opening& opening = v.job.openings[index];
  return opening.head ||
         (v.known.has(path + "storey") && v.known.storeyFloor(static_cast<size_t>(opening.storey)));
}

void validateGableOpenings(const Validation& v, const PlanFacts& plan, const LevelFacts& levels,
                           const std::vector<bool>& gable, const RoofPlan& roof) {
  if (!v.known.eavesUnderside() || !v.known.wallThickness()) return;
  for (size_t i = 0; i < v.job.openings.size(); ++i) {
    const Opening& opening = v.job.openings[i];
    const std::string path = "opening[" + std::to_string(i) + "]";
    const auto wall = wallNamed(opening.wall, plan.corners());
    if (!knowsOpening(v, i) || !wall || !gable[*wall]) continue;
    if (opening.storey < 0 || static_cast<size_t>(opening.storey) >= v.job.storeys.size()) continue;
    const Vec2 a = v.job.outline[*wall], b = v.job.outline[(*wall + 1) % plan.corners()];
    const Vec2 along = (b - a) / plan.length[*wall];
    const bool forward = opening.from == letterOfCorner(*wall);
    const double from = forward ? opening.at : plan.length[*wall] - opening.at - opening.width;
    const size_t edge = plan.edgeOfWall[*wall];
    const Vec2 run = plan.outline[(edge + 1) % plan.corners()] - plan.outline[edge];
    const Vec2 inward = Vec2{-run.y, run.x} / plan.length[*wall] * v.job.walls.total();
    const double head =
        opening.head.value_or(v.job.storeys[static_cast<size_t>(opening.storey)].floor + 2.100);
    double slope = 1e300;
    for (const double s : {from, from + opening.width}) {
      for (const Vec2& p : {a + along * s, a + along * s + inward}) {
        const double over = rise(roof, plan, p, levels.tanPitch);
        if (over < 1e299) slope = std::min(slope, levels.eavesUnderside + over);
      }
    }
    if (head <= slope + kTolerance) continue;
    const std::string name =
        opening.name.empty() ? std::to_string(i + 1) : "\"" + opening.name + "\"";
    v.error(path + ".head",
            "opening " + name + ": head " + levelWords(head) + " is above the slope of the roof, " +
                levelWords(slope) + " over its jamb",
            "lower the head, move it to the middle of the gable or make it narrower");
  }
}

}  // namespace

void validateRoof(const Validation& v, const std::optional<PlanFacts>& plan,
                  const LevelFacts& levels) {
  if (v.known.has({"roof.rafter_width", "roof.spacing"}) &&
      v.job.roof.rafterWidth >= v.job.roof.spacing) {
    v.error("roof.spacing",
            "rafters of " + lengthWords(v.job.roof.rafterWidth) + " stand " +
                lengthWords(v.job.roof.spacing) + " centre to centre",
            "the spacing is more than the rafters' width");
  }
  if (!plan) return;
  const auto gable = gables(v, *plan);
  if (!gable || !gablesCanBe(v, *plan, *gable)) return;
  if (!validateParapets(v, *plan, *gable)) return;
  if (!v.known.has({"roof.verge", "roof.eaves"})) return;
  const auto roof = roofPlan(v, *plan, *gable);
  if (roof) validateGableOpenings(v, *plan, levels, *gable, *roof);
}

}  // namespace model
