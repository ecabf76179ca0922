// Junctions of new walls to buildings that stand already.
#include <algorithm>
#include <cmath>
#include <limits>

#include <glm/geometric.hpp>

#include "model/job/job_names.h"
#include "model/job/nearest.h"
#include "model/job/validate.h"
#include "model/job/value_words.h"

namespace model {

namespace {

constexpr double kOffFace = 0.030;    // metres that a corner may stand before the old face
constexpr double kTrue = 0.0005;      // radians: for bricks to be bonded past it
constexpr double kSquare = 0.01;      // radians: as square as a corner is bonded square
constexpr double kLeastHeight = 0.5;  // metres of the building over the damp course

// A side of a building and how a corner stands to it.
struct Side {
  Vec2 a{0, 0}, b{0, 0};
  double away = 1e300;

  Vec2 along() const { return (b - a) / glm::distance(a, b); }
};

double distanceTo(const Vec2& a, const Vec2& b, const Vec2& p) {
  const Vec2 side = b - a;
  const double t = std::clamp(glm::dot(p - a, side) / glm::dot(side, side), 0.0, 1.0);
  return glm::distance(p, a + side * t);
}

class JunctionCheck {
 public:
  JunctionCheck(const Validation& v, const PlanFacts& plan, const LevelFacts& levels, size_t index)
      : v_(v),
        plan_(plan),
        levels_(levels),
        junction_(v.job.junctions[index]),
        path_("junction[" + std::to_string(index) + "]"),
        who_("junction " + std::to_string(index + 1)) {}

  // The corner that is joined, when nothing is wrong.
  std::optional<size_t> check() {
    if (!v_.known.has(path_) || !v_.known.has(path_ + ".wall")) return std::nullopt;
    const auto wall = knownWall(v_, path_ + ".wall", who_, junction_.wall, plan_.corners());
    if (!wall || !v_.known.has(path_ + ".corner")) return std::nullopt;
    wall_ = *wall;
    const size_t n = plan_.corners();
    const std::string first = letterOfCorner(wall_), second = letterOfCorner((wall_ + 1) % n);
    if (junction_.corner != first && junction_.corner != second) {
      v_.error(path_ + ".corner",
               who_ + ": corner \"" + junction_.corner.substr(0, 60) + "\" is no end of wall " +
                   plan_.wallName(wall_),
               "write \"" + first + "\" or \"" + second + "\"");
      return std::nullopt;
    }
    corner_ = junction_.corner == first ? wall_ : (wall_ + 1) % n;
    const auto building = knownBuilding();
    if (!building || !standsAgainst(*building) || !isSquare() || !canBeBonded())
      return std::nullopt;
    isHighEnough(*building);
    mindNeighbour(*building);
    return corner_;
  }

 private:
  std::optional<size_t> knownBuilding() const {
    if (!v_.known.has(path_ + ".building")) return std::nullopt;
    const auto& buildings = v_.job.site.buildings;
    std::vector<size_t> found;
    std::vector<std::string> names;
    for (size_t i = 0; i < buildings.size(); ++i) {
      // One whose name could not be read may be it.
      const std::string path = "site.building[" + std::to_string(i) + "]";
      if (!v_.known.has(path + ".name")) return std::nullopt;
      names.push_back(buildings[i].name);
      if (buildings[i].name == junction_.building) found.push_back(i);
    }
    const std::string name = "\"" + junction_.building.substr(0, 60) + "\"";
    if (found.empty()) {
      const auto near = nearest(junction_.building, names);
      v_.error(
          path_ + ".building", who_ + ": there is no building " + name,
          near ? "did you mean \"" + *near + "\"?" : "name one of the [[site.building]] sections");
      return std::nullopt;
    }
    if (found.size() > 1) {
      v_.error(path_ + ".building", who_ + ": several buildings are called " + name,
               "give each its own name");
      return std::nullopt;
    }
    const std::string path = "site.building[" + std::to_string(found[0]) + "]";
    if (!v_.known.has(path + ".kind") || !v_.known.has(path + ".outline")) return std::nullopt;
    if (buildings[found[0]].kind == BuildingKind::Demolish) {
      v_.error(path_ + ".building", who_ + ": " + name + " is taken down before the walls go up",
               "join the wall to a building that stays, or leave the junction out");
      return std::nullopt;
    }
    return found[0];
  }

  Vec2 at(size_t corner) const { return v_.job.outline[corner % plan_.corners()]; }
  // Of the wall, from the corner that is joined into it; and of the wall beside it.
  Vec2 into() const { return towards(corner_ == wall_ ? corner_ + 1 : wall_); }
  Vec2 beside() const {
    return towards(corner_ == wall_ ? corner_ + plan_.corners() - 1 : corner_ + 1);
  }
  Vec2 towards(size_t corner) const { return glm::normalize(at(corner) - at(corner_)); }

  // The side that the end of the leaf stands against, over its whole thickness.
  bool standsAgainst(size_t building) {
    if (!v_.known.has("walls.outer_leaf")) return false;
    const Outline& outline = v_.job.site.buildings[building].outline;
    const Vec2 p = at(corner_), q = p + beside() * v_.job.walls.outerLeaf;
    for (size_t i = 0; i < outline.size(); ++i) {
      Side side{outline[i], outline[(i + 1) % outline.size()]};
      if (glm::distance(side.a, side.b) < 1e-6) continue;
      side.away = std::max(distanceTo(side.a, side.b, p), distanceTo(side.a, side.b, q));
      if (side.away < side_.away) side_ = side;
    }
    if (side_.away <= kOffFace + 1e-6) return true;
    double nearest = 1e300;
    for (size_t i = 0; i < outline.size(); ++i)
      nearest = std::min(nearest, distanceTo(outline[i], outline[(i + 1) % outline.size()], p));
    const bool corner = nearest <= kOffFace + 1e-6;
    v_.error(path_ + ".corner",
             corner
                 ? who_ + ": the end of wall " + plan_.wallName(wall_) + " at corner " +
                       junction_.corner + " is only partly against \"" + junction_.building + "\""
                 : who_ + ": corner " + junction_.corner + " stands " + lengthWords(nearest) +
                       " from \"" + junction_.building + "\"",
             "the whole end of the outer leaf lies on a side of the building, or at most " +
                 lengthWords(kOffFace) + " before it");
    return false;
  }

  bool isSquare() const {
    const double angle = std::asin(std::min(1.0, std::abs(glm::dot(into(), side_.along()))));
    if (angle > kSquare) {
      v_.error(path_ + ".wall",
               who_ + ": wall " + plan_.wallName(wall_) + " does not run up square to \"" +
                   junction_.building + "\"",
               "only a wall that meets its face at a right angle is joined; perhaps the wall on "
               "the other side of corner " +
                   junction_.corner + " is meant");
      return false;
    }
    // Bricks that go on past the corner into the old wall would stand in the wall beside it.
    const bool bonded = junction_.kind != JunctionKind::StarterTies;
    if (std::abs(plan_.angle[corner_] - 1.5707963267948966) > (bonded ? kTrue : kSquare)) {
      v_.error(path_ + ".corner",
               who_ + ": the walls do not meet at a right angle at corner " + junction_.corner,
               "the wall beside it runs along the face of the building");
      return false;
    }
    return true;
  }

  bool canBeBonded() const {
    if (!v_.known.has(path_ + ".kind")) return false;
    if (junction_.kind == JunctionKind::StarterTies) return true;
    if (!v_.known.has("walls.brick_length") ||
        v_.job.walls.outerLeaf < 0.75 * v_.job.walls.brickLength)
      return true;
    v_.error(path_ + ".kind",
             who_ + ": an outer leaf of " + lengthWords(v_.job.walls.outerLeaf) +
                 " is not bonded into an old wall here",
             "only leaves half a brick thick are; write \"starter-ties\"");
    return false;
  }

  void isHighEnough(size_t building) const {
    const std::string path = "site.building[" + std::to_string(building) + "]";
    if (!v_.known.has(path + ".height") || !v_.known.dampCourse() || !v_.known.groundAtPlan())
      return;
    const double top = levels_.lowestGround + v_.job.site.buildings[building].height;
    if (top >= levels_.dampCourse + kLeastHeight) return;
    v_.error(path_ + ".building",
             who_ + ": \"" + junction_.building + "\" ends at about " + levelWords(top) +
                 ", hardly over the damp course at " + levelWords(levels_.dampCourse),
             "walls are joined from the damp course up; give site.building.height, or leave the "
             "junction out");
  }

  void mindNeighbour(size_t building) const {
    if (v_.job.site.buildings[building].kind != BuildingKind::Neighbour ||
        junction_.kind == JunctionKind::StarterTies)
      return;
    v_.warning(path_ + ".kind",
               who_ + " cuts into the neighbour's wall, \"" + junction_.building + "\"",
               "not without their agreement in writing: follow local law on party walls; "
               "\"starter-ties\" cuts no pockets");
  }

  const Validation& v_;
  const PlanFacts& plan_;
  const LevelFacts& levels_;
  const WallJunction& junction_;
  std::string path_, who_;
  size_t wall_ = 0, corner_ = 0;  // in the file's order
  Side side_;
};

}  // namespace

void validateJunctions(const Validation& v, const std::optional<PlanFacts>& plan,
                       const LevelFacts& levels) {
  if (!plan) return;
  std::vector<std::pair<size_t, size_t>> before;
  for (size_t i = 0; i < v.job.junctions.size(); ++i) {
    const auto corner = JunctionCheck(v, *plan, levels, i).check();
    if (!corner) continue;
    for (const auto& [other, there] : before) {
      if (there != *corner) continue;
      v.error("junction[" + std::to_string(i) + "].corner",
              "junction " + std::to_string(i + 1) + " is at the same corner as junction " +
                  std::to_string(other + 1),
              "leave one of them out");
      break;
    }
    before.emplace_back(i, *corner);
  }
}

}  // namespace model
