#include <cmath>
#include <cstdio>
#include <map>
#include <tuple>
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

bool isCellarBlockwork(const Element& e) {
  return e.kind == ElementKind::CellarWall && e.material == Material::Block;
}

double leafThickness(const Element& e, const Job& job) {
  if (isCellarBlockwork(e)) {
    const bool hollow = job.cellar->kind == CellarWallKind::HollowBlock;
    return hollow ? job.cellar->wall : job.cellar->leaf;
  }
  return e.kind == ElementKind::OuterLeaf ? job.walls.outerLeaf : job.walls.innerLeaf;
}

bool isLeaf(const Element& e) {
  return e.kind == ElementKind::OuterLeaf || e.kind == ElementKind::InnerLeaf ||
         isCellarBlockwork(e);
}

void countLeafAreas(const TakeoffInput& in, Tally& tally) {
  const WallBuildUp& w = in.job.walls;
  const TakeoffItem bricks{"Facing brickwork", Unit::SquareMetre, 0, 0,
                           faceBasis("bricks", w.brickLength, w.brickHeight, w.joint)};
  const auto blocks = [&](const Element& e) {
    return TakeoffItem{
        std::string(isCellarBlockwork(e) ? "Blockwork, cellar walls, " : "Blockwork, ") +
            lengthText(leafThickness(e, in.job)) + " wide",
        Unit::SquareMetre, 0, 0, faceBasis("blocks", w.blockLength, w.blockHeight, w.joint)};
  };
  for (const Element& e : in.works.elements) {
    if (!isLeaf(e) || leafThickness(e, in.job) <= 0) continue;
    tally.add(e.material == Material::Brick ? bricks : blocks(e),
              volume(e.solid) / leafThickness(e, in.job), e.placed.stage);
  }
}

void countRender(const TakeoffInput& in, Tally& tally) {
  const WallBuildUp& w = in.job.walls;
  for (const Element& e : in.works.elements) {
    if (e.kind == ElementKind::Render && w.render > 0) {
      tally.add(
          {"Render, " + lengthText(w.render), Unit::SquareMetre, 0, 0, "face, openings taken out"},
          volume(e.solid) / w.render, e.placed.stage);
      tally.add({"Mortar for render", Unit::CubicMetre, waste::kRender, 0.1, "face x thickness"},
                volume(e.solid), e.placed.stage);
    }
  }
}

}  // namespace

std::string blocksName(const Element& leaf, const Job& job) {
  const std::string wide = lengthText(leafThickness(leaf, job)) + " wide";
  if (!isCellarBlockwork(leaf)) return "Blocks, " + wide;
  const bool hollow = job.cellar->kind == CellarWallKind::HollowBlock;
  return (hollow ? "Hollow blocks, " : "Blocks, ") + wide + ", cellar walls";
}

void countMasonry(const TakeoffInput& in, Tally& tally) {
  countLeafAreas(in, tally);
  countUnits(in, tally);
  countRender(in, tally);
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
  std::map<std::tuple<std::string, int, int>, std::vector<StageKey>> lintels;
  for (const Element& e : in.works.elements) {
    if (e.kind != ElementKind::Lintel) continue;
    const auto index = in.settingOut.wallNamed(e.wall);
    if (!index) continue;
    const WallLine& wall = in.settingOut.walls[*index];
    const std::string length = lengthText(extentAlong(e.solid, Vec3(wall.along, 0)));
    const int height = std::stoi(lengthText(extentAlong(e.solid, {0, 0, 1})));
    lintels[{leafOf(e, wall, in.job.walls), std::stoi(length), height}].push_back(e.placed.stage);
  }
  for (const auto& [kind, stages] : lintels) {
    const auto& [leaf, length, height] = kind;
    const TakeoffItem item{
        "Lintel " + std::to_string(length) + " x " + std::to_string(height) + ", " + leaf,
        Unit::Each, 0, 1, "length x height; opening and bearing at both ends"};
    for (const StageKey& stage : stages) tally.add(item, 1, stage);
  }
}

}  // namespace model
