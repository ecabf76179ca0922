// Underlay, battens and tiles, as one real thickness over each slope.
#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/works/parts.h"
#include "model/works/roof_frame.h"

namespace model {
namespace {

// The covering rises from all eaves alike, so that it closes at hips and ridge together.
Placement upTheSlope(const SettingOut& settingOut, size_t face, double farthestRun) {
  const WallLine& wall = settingOut.walls[settingOut.roof.faces[face].edge];
  const double cosine = cosPitch(settingOut);
  const Vec2 inward = wall.outward * -cosine;
  const Vec2 eaves = settingOut.eavesOutline[wall.from];
  Placement placement = whole({StageKind::RoofCovering});
  placement.end = 1;
  placement.direction = {inward.x, inward.y, settingOut.tanPitch * cosine};
  const double z = settingOut.rafterUnderside(face).at(eaves);
  placement.low = glm::dot(placement.direction, Vec3{eaves.x, eaves.y, z});
  placement.high = placement.low + farthestRun / cosine;
  return placement;
}

}  // namespace

void buildRoofCovering(const Job& job, const SettingOut& settingOut, Works& works) {
  const std::vector<RoofFace>& faces = settingOut.roof.faces;
  const double cosine = cosPitch(settingOut);
  double farthestRun = 0;
  for (const RoofFace& face : faces)
    farthestRun = std::max(farthestRun, *std::max_element(face.run.begin(), face.run.end()));
  for (size_t f = 0; f < faces.size(); ++f) {
    const std::string& wall = settingOut.walls[faces[f].edge].name;
    const Region plan{faces[f].plan, {}};
    const Plane under = rafterTop(job, settingOut, f);
    Plane over = under;
    over.level += job.roof.covering / cosine;
    Element covering;
    covering.id = "roof covering " + wall;
    covering.name = "Roof covering over " + wall;
    covering.kind = ElementKind::RoofCovering;
    covering.material = Material::Tile;
    covering.solid = prism(plan, under, over);
    covering.quantity = {area(plan) / cosine, Unit::SquareMetre};
    covering.placed = upTheSlope(settingOut, f, farthestRun);
    covering.wall = wall;
    add(works, std::move(covering));
  }
}

}  // namespace model
