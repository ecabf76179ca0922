// Rafters, and the boards along hips, valleys and ridges that they are cut to.
#include <algorithm>
#include <cmath>
#include <map>

#include <glm/geometric.hpp>

#include "model/walls/wall_layer.h"
#include "model/works/parts.h"
#include "model/works/roof_frame.h"
#include "model/works/stepped_prism.h"

namespace model {
namespace {

constexpr double kBoardsDone = 0.2;  // of the stage; the rafters follow

Element timber(std::string id, std::string name, Solid solid, double length) {
  Element element;
  element.id = std::move(id);
  element.name = std::move(name);
  element.kind = ElementKind::Rafter;
  element.material = Material::Timber;
  element.solid = std::move(solid);
  element.quantity = {length, Unit::Metre};
  return element;
}

// A part of a slope's timber, with the birdsmouth cut out of it where it lies over the plate: plumb
// on the plate's outer edge, level on its top.
void addNotched(const Job& job, const SettingOut& settingOut, size_t face, const Polygon& plan,
                std::vector<PrismPiece>& pieces) {
  const WallLine& wall = settingOut.walls[settingOut.roof.faces[face].edge];
  const Plane under = settingOut.rafterUnderside(face), over = rafterTop(job, settingOut, face);
  const Plane inward{-wall.outward, glm::dot(wall.outward, wall.start)};
  const double edge = settingOut.faceDistances.innerLeafFront;
  const CutPiece outside = cutWhere(plan, inward, edge);
  const CutPiece seat = cutWhere(outside.after, inward, edge + settingOut.rafterSeat);
  const auto put = [&](const Polygon& part, const Plane& bottom) {
    if (part.size() > 2) pieces.push_back({part, bottom, over});
  };
  put(outside.before, under);
  put(seat.before, Plane::flat(settingOut.levels.plateTop));
  put(seat.after, under);
}

// Does any of the timber lie over its wall's plate? A rafter outside a gable does not.
bool overPlate(const Job& job, const SettingOut& settingOut, size_t face, const Polygon& plan) {
  const WallLine& wall = settingOut.walls[settingOut.roof.faces[face].edge];
  const double edge = settingOut.faceDistances.innerLeafFront;
  const WallLayer plate =
      layerOf(settingOut, settingOut.roof.faces[face].edge, edge, edge + job.roof.plateWidth);
  const double from = std::min(plate.startFront, plate.startBack);
  const double to = std::max(plate.endFront, plate.endBack);
  double low = 1e300, high = -1e300;
  for (const Vec2& p : plan) {
    const double s = glm::dot(p - wall.start, wall.along);
    low = std::min(low, s);
    high = std::max(high, s);
  }
  return high > from + 1e-6 && low < to - 1e-6;
}

// A board over its two halves, each under its own slope, as one solid: its ridge runs along the
// roof line.
Solid boardSolid(const Job& job, const SettingOut& settingOut,
                 const std::vector<HalfBoard>& halves) {
  std::vector<PrismPiece> pieces;
  for (const HalfBoard& h : halves) {
    addNotched(job, settingOut, h.face, {h.a, h.b, h.sideB, h.sideA}, pieces);
  }
  return steppedPrism(pieces);
}

Solid rafterSolid(const Job& job, const SettingOut& settingOut, size_t face, const Polygon& strip) {
  if (!overPlate(job, settingOut, face, strip)) {
    return prism(Region{strip, {}}, settingOut.rafterUnderside(face),
                 rafterTop(job, settingOut, face));
  }
  std::vector<PrismPiece> pieces;
  addNotched(job, settingOut, face, strip, pieces);
  return steppedPrism(pieces);
}

const char* boardName(RoofLineKind kind) {
  switch (kind) {
    case RoofLineKind::Hip:
      return "Hip board";
    case RoofLineKind::Valley:
      return "Valley board";
    default:
      return "Ridge board";
  }
}

void addBoards(const Job& job, const SettingOut& settingOut, const RoofFrame& frame, Works& works) {
  std::map<size_t, std::vector<HalfBoard>> byLine;
  for (const HalfBoard& half : frame.boards) byLine[half.line].push_back(half);
  std::map<std::string, int> same;
  double done = 0;
  for (const auto& [index, halves] : byLine) {
    const RoofLine& line = settingOut.roof.lines[index];
    const std::string a = settingOut.walls[line.faceA].name, b = settingOut.walls[line.faceB].name;
    const std::string kind = boardName(line.kind);
    // Two slopes may meet along several lines.
    const int number = ++same[kind + a + b];
    std::string id = "rafters/" + kind + " " + a + " " + b;
    if (number > 1) id += "/" + std::to_string(number);
    const double rise = (line.runB - line.runA) * settingOut.tanPitch;
    Element board =
        timber(id, kind + " between " + a + " and " + b, boardSolid(job, settingOut, halves),
               std::hypot(glm::length(line.b - line.a), rise));
    board.placed = whole({StageKind::Rafters}, kBoardsDone * done / double(byLine.size()));
    ++done;
    add(works, std::move(board));
  }
}

// From its lowest to its highest point, up the slope.
double slopeLength(const SettingOut& settingOut, const WallLine& wall, const Polygon& strip) {
  double low = 1e300, high = -1e300;
  for (const Vec2& p : strip) {
    const double run = -glm::dot(p - wall.start, wall.outward);
    low = std::min(low, run);
    high = std::max(high, run);
  }
  return (high - low) / cosPitch(settingOut);
}

}  // namespace

void buildRafters(const Job& job, const SettingOut& settingOut, Works& works) {
  const RoofFrame frame = deriveRoofFrame(job, settingOut);
  addBoards(job, settingOut, frame, works);
  std::vector<std::vector<Polygon>> strips;
  size_t count = 0, set = 0;
  for (size_t f = 0; f < frame.clear.size(); ++f) {
    strips.push_back(rafterStrips(job, settingOut, f, frame.clear[f]));
    count += strips.back().size();
  }
  for (size_t f = 0; f < strips.size(); ++f) {
    const WallLine& wall = settingOut.walls[settingOut.roof.faces[f].edge];
    for (size_t k = 0; k < strips[f].size(); ++k) {
      const std::string number = std::to_string(k + 1);
      Element rafter =
          timber("rafters/" + wall.name + "/" + number, "Rafter " + number + " over " + wall.name,
                 rafterSolid(job, settingOut, f, strips[f][k]),
                 slopeLength(settingOut, wall, strips[f][k]));
      rafter.wall = wall.name;
      rafter.placed = whole({StageKind::Rafters},
                            kBoardsDone + (1 - kBoardsDone) * double(set++) / double(count));
      add(works, std::move(rafter));
    }
  }
}

}  // namespace model
