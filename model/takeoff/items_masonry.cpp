#include <cmath>
#include <cstdio>
#include <map>
#include <utility>
#include <vector>

#include <glm/geometric.hpp>

#include "model/level_text.h"
#include "model/takeoff/items.h"
#include "model/takeoff/measure.h"
#include "model/takeoff/unit_rates.h"

namespace model {
namespace {

// Sizes of units as they are, not to the millimetre: "193.7".
std::string sizeText(double metres) {
  char text[32];
  std::snprintf(text, sizeof text, "%.1f", metres * 1000);
  std::string size = text;
  if (size.ends_with(".0")) size.resize(size.size() - 2);
  return size;
}

// For those who are used to reckon by it.
std::string faceBasis(const char* unit, double length, double height, double joint) {
  char text[128];
  std::snprintf(text, sizeof text,
                "face, openings taken out; a m2 has %.2f %s of %s x %s with joints of %s",
                unitsPerSquareMetre(length, height, joint), unit, sizeText(length).c_str(),
                sizeText(height).c_str(), sizeText(joint).c_str());
  return text;
}

double leafThickness(const Element& e, const WallBuildUp& walls) {
  return e.kind == ElementKind::OuterLeaf ? walls.outerLeaf : walls.innerLeaf;
}

bool isLeaf(const Element& e) {
  return e.kind == ElementKind::OuterLeaf || e.kind == ElementKind::InnerLeaf;
}

void countLeafAreas(const TakeoffInput& in, Tally& tally) {
  const WallBuildUp& w = in.job.walls;
  const TakeoffItem bricks{"Facing brickwork", Unit::SquareMetre, 0, 0,
                           faceBasis("bricks", w.brickLength, w.brickHeight, w.joint)};
  const TakeoffItem blocks{"Blockwork, " + lengthText(w.innerLeaf) + " wide", Unit::SquareMetre, 0,
                           0, faceBasis("blocks", w.blockLength, w.blockHeight, w.joint)};
  for (const Element& e : in.works.elements) {
    if (!isLeaf(e) || leafThickness(e, w) <= 0) continue;
    tally.add(e.material == Material::Brick ? bricks : blocks,
              volume(e.solid) / leafThickness(e, w), e.placed.stage);
  }
}

// The stage in which the inner leaf beside an opening rises past half its height.
StageKey stageBeside(const TakeoffInput& in, const BuiltOpening& opening) {
  const double middle = (opening.sill + opening.head) / 2;
  for (const Lift& lift : in.settingOut.lifts) {
    if (middle <= lift.top) return {StageKind::RunIn, lift.storey, lift.number};
  }
  return {StageKind::Gables};
}

void countTies(const TakeoffInput& in, Tally& tally) {
  const WallBuildUp& w = in.job.walls;
  if (w.cavity <= 0 || w.innerLeaf <= 0) return;
  const TakeoffItem ties{"Wall ties", Unit::Each, waste::kTies, 1,
                         "2.5 per m2: 900 across, 450 up, staggered"};
  for (const Element& e : in.works.elements) {
    if (e.kind != ElementKind::InnerLeaf) continue;
    tally.add(ties, volume(e.solid) / w.innerLeaf * kTiesPerSquareMetre, e.placed.stage);
  }
  const TakeoffItem jambs{"Wall ties beside openings", Unit::Each, waste::kTies, 1,
                          "one to each 300 of height, both sides"};
  for (const BuiltOpening& opening : in.settingOut.openings) {
    const double each = std::floor((opening.head - opening.sill) / kJambTieSpacing + 1e-9) + 1;
    tally.add(jambs, 2 * each, stageBeside(in, opening));
  }
}

void countLinings(const TakeoffInput& in, Tally& tally) {
  const WallBuildUp& w = in.job.walls;
  const double leaf = (w.outerLeaf + w.innerLeaf) / 2;
  for (const Element& e : in.works.elements) {
    if (e.kind == ElementKind::CavityInsulation && w.insulation > 0) {
      tally.add({"Cavity insulation, " + lengthText(w.insulation), Unit::SquareMetre,
                 waste::kBoards, 1, "face, openings taken out"},
                volume(e.solid) / w.insulation, e.placed.stage);
    } else if (e.kind == ElementKind::CavityCloser) {
      tally.add({"Cavity closers, " + lengthText(w.cavity), Unit::Metre, waste::kBoards, 1,
                 "jambs, sills and thresholds"},
                e.quantity.amount, e.placed.stage);
    } else if (e.kind == ElementKind::Render && w.render > 0) {
      tally.add(
          {"Render, " + lengthText(w.render), Unit::SquareMetre, 0, 0, "face, openings taken out"},
          volume(e.solid) / w.render, e.placed.stage);
      tally.add({"Mortar for render", Unit::CubicMetre, waste::kRender, 0.1, "face x thickness"},
                volume(e.solid), e.placed.stage);
    } else if (e.kind == ElementKind::DampCourse && e.top > e.underside && leaf > 0) {
      const double run = e.quantity.unit == Unit::Metre
                             ? e.quantity.amount
                             : volume(e.solid) / (e.top - e.underside) / leaf;
      tally.add({"Damp course", Unit::Metre, waste::kMembrane, 1, "both leaves"}, run,
                e.placed.stage);
    }
  }
}

}  // namespace

void countMasonry(const TakeoffInput& in, Tally& tally) {
  countLeafAreas(in, tally);
  countUnits(in, tally);
  countTies(in, tally);
  countLinings(in, tally);
}

namespace {

// The leaf that a lintel lies in, from how far in from the outer face it lies.
std::string leafOf(const Element& lintel, const WallLine& wall, const WallBuildUp& walls) {
  const Vec3 middle = middleOf(lintel.solid);
  const double inward = -glm::dot(Vec2(middle) - wall.start, wall.outward);
  return inward < walls.outerLeaf ? "outer leaf" : "inner leaf";
}

}  // namespace

void countLintels(const TakeoffInput& in, Tally& tally) {
  // By length, shortest first, as they are ordered. To the millimetre: half ones go up.
  std::map<std::pair<std::string, int>, std::vector<StageKey>> lintels;
  for (const Element& e : in.works.elements) {
    if (e.kind != ElementKind::Lintel) continue;
    const auto index = in.settingOut.wallNamed(e.wall);
    if (!index) continue;
    const WallLine& wall = in.settingOut.walls[*index];
    const std::string length = lengthText(extentAlong(e.solid, Vec3(wall.along, 0)));
    lintels[{leafOf(e, wall, in.job.walls), std::stoi(length)}].push_back(e.placed.stage);
  }
  for (const auto& [kind, stages] : lintels) {
    const TakeoffItem item{"Lintel " + std::to_string(kind.second) + ", " + kind.first, Unit::Each,
                           0, 1, "opening and bearing at both ends"};
    for (const StageKey& stage : stages) tally.add(item, 1, stage);
  }
}

}  // namespace model
