// The timber plate along the top of the inner leaf that the rafters bear on.
#include <glm/geometric.hpp>

#include "model/works/parts.h"

namespace model {
namespace {

// One length along a wall, cut on the mitre at both corners, so that it ends against the next plate
// or against the inner leaf of a gable, which is cut on the same line.
Solid plateSolid(const Polygon& outer, const Polygon& inner, size_t from, size_t to,
                 const Levels& levels) {
  const Region plan{{outer[from], outer[to], inner[to], inner[from]}, {}};
  return prism(plan, levels.wallTop, levels.plateTop);
}

}  // namespace

void buildWallPlates(const Job& job, const SettingOut& settingOut, Works& works) {
  const double face = settingOut.faceDistances.innerLeafFront;
  const Polygon outer = settingOut.ring(face);
  const Polygon inner = settingOut.ring(face + job.roof.plateWidth);
  size_t plates = 0, laid = 0;
  for (const WallLine& wall : settingOut.walls) plates += wall.eaves == EavesKind::Hip;
  for (const WallLine& wall : settingOut.walls) {
    if (wall.eaves != EavesKind::Hip) continue;
    Element plate;
    plate.id = "wall " + wall.name + "/wall plate";
    plate.name = "Wall plate on " + wall.name;
    plate.kind = ElementKind::WallPlate;
    plate.material = Material::Timber;
    plate.solid = plateSolid(outer, inner, wall.from, wall.to, settingOut.levels);
    plate.quantity = {glm::length(outer[wall.to] - outer[wall.from]), Unit::Metre};
    plate.placed = whole({StageKind::WallPlate}, double(laid++) / double(plates));
    plate.wall = wall.name;
    add(works, std::move(plate));
  }
}

}  // namespace model
