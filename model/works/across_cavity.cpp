#include "model/works/across_cavity.h"

namespace model {

Solid alongLayer(const WallLayer& layer, const Polygon& section, double s0, double s1) {
  // Where a mitre is, how far in makes the difference.
  const FacePair near = layer.through({s0, 0}), far = layer.through({s1, 0});
  const auto at = [&](const FacePair& end, double d) {
    return end.front.x + (end.back.x - end.front.x) * (d - layer.outer) / layer.thickness();
  };
  // Seen from the wall's start, looking along it, d runs to the left hand: the far end is the one
  // from which the section is anticlockwise.
  std::vector<Vec3> front, back;
  for (const Vec2& p : section) {
    front.emplace_back(layer.wall->at(at(far, p.x), p.x), p.y);
    back.emplace_back(layer.wall->at(at(near, p.x), p.x), p.y);
  }
  return panel({section, {}}, front, back);
}

Solid alongWall(const WallLine& wall, const Polygon& section, double s0, double s1) {
  // Seen from the wall's start, looking along it, d runs to the left hand: the far end is the one
  // from which the section is anticlockwise.
  std::vector<Vec3> front, back;
  for (const Vec2& p : section) {
    front.emplace_back(wall.at(s1, p.x), p.y);
    back.emplace_back(wall.at(s0, p.x), p.y);
  }
  return panel({section, {}}, front, back);
}

}  // namespace model
