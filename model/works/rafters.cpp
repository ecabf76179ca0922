// Rafters, and the boards along hips, valleys and ridges that they are cut to.
#include <algorithm>
#include <cmath>
#include <map>

#include <glm/geometric.hpp>

#include "model/works/parts.h"
#include "model/works/roof_frame.h"

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

// A board over its two halves, each under its own slope, as one solid: its ridge runs along the
// roof line. With only one half, a plain prism.
Solid boardSolid(const Job& job, const SettingOut& settingOut,
                 const std::vector<HalfBoard>& halves) {
  if (halves.size() == 1) {
    const HalfBoard& h = halves[0];
    return prism(Region{{h.a, h.b, h.sideB, h.sideA}, {}}, settingOut.rafterUnderside(h.face),
                 rafterTop(job, settingOut, h.face));
  }
  const HalfBoard &p = halves[0], &q = halves[1];  // q runs the other way along the line
  const Vec2 plan[] = {p.a, q.sideB, q.sideA, p.b, p.sideB, p.sideA};
  const size_t faces[] = {p.face, q.face, q.face, p.face, p.face, p.face};
  Solid solid;
  for (size_t i = 0; i < 6; ++i)
    solid.points.emplace_back(plan[i].x, plan[i].y,
                              settingOut.rafterUnderside(faces[i]).at(plan[i]));
  for (size_t i = 0; i < 6; ++i)
    solid.points.emplace_back(plan[i].x, plan[i].y,
                              rafterTop(job, settingOut, faces[i]).at(plan[i]));
  const std::array<std::uint32_t, 3> tops[] = {{0, 1, 2}, {0, 2, 3}, {0, 3, 4}, {0, 4, 5}};
  for (const auto& [a, b, c] : tops) {
    solid.triangles.push_back({a, c, b});
    solid.triangles.push_back({a + 6, b + 6, c + 6});
  }
  for (std::uint32_t i = 0; i < 6; ++i) {
    const std::uint32_t j = (i + 1) % 6;
    solid.triangles.push_back({i, j, j + 6});
    solid.triangles.push_back({i, j + 6, i + 6});
  }
  return solid;
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
                 prism(Region{strips[f][k], {}}, settingOut.rafterUnderside(f),
                       rafterTop(job, settingOut, f)),
                 slopeLength(settingOut, wall, strips[f][k]));
      rafter.wall = wall.name;
      rafter.placed = whole({StageKind::Rafters},
                            kBoardsDone + (1 - kBoardsDone) * double(set++) / double(count));
      add(works, std::move(rafter));
    }
  }
}

}  // namespace model
