#include "model/settingout/wall_ring.h"

#include <cmath>
#include <numbers>

#include <glm/geometric.hpp>

namespace model {

namespace {

double interiorAngle(const Vec2& before, const Vec2& at, const Vec2& after) {
  const Vec2 in = at - before, out = after - at;
  const double turning = std::atan2(cross(in, out), glm::dot(in, out));
  return std::numbers::pi - turning;
}

}  // namespace

WallRing wallRing(const Polygon& outline, const std::vector<std::string>& letters) {
  const size_t n = outline.size();
  WallRing ring;
  for (size_t i = 0; i < n; ++i) {
    const Vec2 &before = outline[(i + n - 1) % n], &after = outline[(i + 1) % n];
    ring.corners.push_back({letters[i], outline[i], interiorAngle(before, outline[i], after)});
  }
  for (size_t i = 0; i < n; ++i) {
    WallLine wall;
    wall.from = i;
    wall.to = (i + 1) % n;
    wall.start = outline[wall.from];
    wall.end = outline[wall.to];
    wall.length = glm::distance(wall.start, wall.end);
    wall.along = (wall.end - wall.start) / wall.length;
    wall.outward = {wall.along.y, -wall.along.x};
    wall.name = ring.corners[wall.from].letter + "-" + ring.corners[wall.to].letter;
    ring.walls.push_back(wall);
  }
  return ring;
}

WallRing cellarRing(const SettingOut& settingOut) {
  std::vector<std::string> letters;
  for (size_t i = 1; i <= settingOut.cellarOutline.size(); ++i)
    letters.push_back("K" + std::to_string(i));
  return wallRing(settingOut.cellarOutline, letters);
}

}  // namespace model
