#include "model/works/across_cavity.h"

namespace model {

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
