#include "model/walls/wall_layer.h"

#include <algorithm>
#include <array>
#include <cmath>

#include <glm/geometric.hpp>

namespace model {

namespace {

constexpr double kAtEnd = 2e-6;  // metres: booleans are worked on a grid of one micrometre

// Where the mitre of two walls lies, `inward` metres in, along the wall that leaves the corner.
double mitre(const WallLine& before, const WallLine& after, double inward) {
  const double turned = 1 + glm::dot(before.outward, after.outward);
  return -inward * glm::dot(before.outward + after.outward, after.along) / turned;
}

}  // namespace

WallLayer layerOf(const SettingOut& settingOut, size_t wall, double outer, double inner) {
  return layerIn(settingOut.walls, wall, outer, inner);
}

WallLayer layerIn(const std::vector<WallLine>& walls, size_t wall, double outer, double inner) {
  const size_t n = walls.size();
  const WallLine &line = walls[wall], &before = walls[(wall + n - 1) % n],
                 &after = walls[(wall + 1) % n];
  // The next wall's mitre, measured along it, lies as far before this wall's end.
  WallLayer layer;
  layer.wall = &line;
  layer.outer = outer;
  layer.inner = inner;
  layer.startFront = mitre(before, line, outer);
  layer.startBack = mitre(before, line, inner);
  layer.endFront = line.length - mitre(line, after, outer);
  layer.endBack = line.length - mitre(line, after, inner);
  layer.from = std::max(layer.startFront, layer.startBack);
  layer.to = std::min(layer.endFront, layer.endBack);
  return layer;
}

WallLayer squared(WallLayer layer) {
  layer.from = layer.startFront = layer.startBack = 0;
  layer.to = layer.endFront = layer.endBack = layer.wall->length;
  return layer;
}

WallLayer WallLayer::between(double s0, double s1) const {
  WallLayer part = *this;
  if (s0 > from + kAtEnd) part.from = part.startFront = part.startBack = s0;
  if (s1 < to - kAtEnd) part.to = part.endFront = part.endBack = s1;
  return part;
}

FacePair WallLayer::through(const Vec2& point) const {
  if (std::fabs(point.x - from) < kAtEnd) return {{startFront, point.y}, {startBack, point.y}};
  if (std::fabs(point.x - to) < kAtEnd) return {{endFront, point.y}, {endBack, point.y}};
  return {point, point};
}

void WallLayer::addBox(const Rect& r, Solid& solid) const {
  if (r.empty()) return;
  const auto first = static_cast<std::uint32_t>(solid.points.size());
  for (const Vec2& p : {Vec2{r.s0, r.z0}, {r.s1, r.z0}, {r.s1, r.z1}, {r.s0, r.z1}}) {
    const FacePair place = through(p);
    solid.points.emplace_back(wall->at(place.front.x, outer), place.front.y);
    solid.points.emplace_back(wall->at(place.back.x, inner), place.back.y);
  }
  // Even points in front, odd ones behind; anticlockwise from outside.
  static constexpr std::array<std::array<std::uint32_t, 3>, 12> kSides{{{0, 2, 4},
                                                                        {0, 4, 6},
                                                                        {1, 5, 3},
                                                                        {1, 7, 5},
                                                                        {0, 1, 3},
                                                                        {0, 3, 2},
                                                                        {2, 3, 5},
                                                                        {2, 5, 4},
                                                                        {4, 5, 7},
                                                                        {4, 7, 6},
                                                                        {6, 7, 1},
                                                                        {6, 1, 0}}};
  for (const auto& [a, b, c] : kSides) solid.triangles.push_back({first + a, first + b, first + c});
}

Solid WallLayer::solid(const Region& elevation, const std::vector<FacePair>& places) const {
  std::vector<Vec3> front, back;
  for (const FacePair& place : places) {
    front.push_back({wall->at(place.front.x, outer), place.front.y});
    back.push_back({wall->at(place.back.x, inner), place.back.y});
  }
  return panel(elevation, front, back);
}

Solid WallLayer::solid(const Regions& elevation) const {
  Solid all;
  for (const Region& region : elevation) {
    std::vector<FacePair> places;
    for (const Vec2& p : regionPoints(region)) places.push_back(through(p));
    if (elevation.size() == 1) return solid(region, places);
    all.append(solid(region, places));
  }
  return all;
}

}  // namespace model
