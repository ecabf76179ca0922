#include "tests/support/sample_model.h"

#include <algorithm>
#include <array>

namespace support {

namespace {

using model::Element;
using model::ElementKind;
using model::Material;
using model::Placement;
using model::StageKind;
using model::Vec3;

constexpr double kShift = 100;

// Corner i: bit 0 east, bit 1 north, bit 2 up. Outward faces, anticlockwise.
void addBox(model::Solid& solid, Vec3 low, Vec3 high) {
  const auto first = static_cast<std::uint32_t>(solid.points.size());
  for (int i = 0; i < 8; ++i)
    solid.points.push_back(
        {(i & 1 ? high.x : low.x) + kShift, i & 2 ? high.y : low.y, i & 4 ? high.z : low.z});
  constexpr std::array<std::array<std::uint32_t, 3>, 12> kTriangles{{{0, 2, 3},
                                                                     {0, 3, 1},
                                                                     {4, 5, 7},
                                                                     {4, 7, 6},
                                                                     {0, 1, 5},
                                                                     {0, 5, 4},
                                                                     {2, 6, 7},
                                                                     {2, 7, 3},
                                                                     {0, 4, 6},
                                                                     {0, 6, 2},
                                                                     {1, 3, 7},
                                                                     {1, 7, 5}}};
  for (const auto& t : kTriangles)
    solid.triangles.push_back({first + t[0], first + t[1], first + t[2]});
}

Element thing(const char* name, ElementKind kind, Material material, Placement placed) {
  Element e;
  e.id = e.name = name;
  e.kind = kind;
  e.material = material;
  e.placed = placed;
  return e;
}

Placement at(StageKind stage, Vec3 direction = {0, 0, 0}, double low = 0, double high = 1) {
  Placement p;
  p.stage.kind = stage;
  p.direction = direction;
  p.low = low;
  p.high = high;
  return p;
}

void put(model::Works& works, Element e) {
  e.underside = 1e9;
  e.top = -1e9;
  for (const Vec3& p : e.solid.points) {
    e.underside = std::min(e.underside, p.z);
    e.top = std::max(e.top, p.z);
  }
  works.elements.push_back(std::move(e));
}

void addGround(model::Works& works) {
  Element ground = thing("ground", ElementKind::Ground, Material::Earth, at(StageKind::Existing));
  addBox(ground.solid, {-6, -6, -2}, {6, 6, -1});
  addBox(ground.solid, {-6, -6, -1}, {6, -3, 0});
  addBox(ground.solid, {-6, 3, -1}, {6, 6, 0});
  addBox(ground.solid, {-6, -3, -1}, {-4, 3, 0});
  addBox(ground.solid, {4, -3, -1}, {6, 3, 0});
  put(works, ground);
  Element spoil = thing("spoil", ElementKind::Spoil, Material::Earth, at(StageKind::Existing));
  addBox(spoil.solid, {-4, -3, -1}, {4, 3, 0});
  spoil.removed = at(StageKind::TrenchDig, {0, 0, -1}, 0, 1);
  put(works, spoil);
}

void addWall(model::Works& works, const char* name, Vec3 low, Vec3 high) {
  Element wall = thing(name, ElementKind::OuterLeaf, Material::Brick,
                       at(StageKind::WallsBelowDampCourse, {0, 0, 1}, low.z, high.z));
  addBox(wall.solid, low, high);
  put(works, wall);
}

}  // namespace

model::Model sampleModel() {
  model::Model m;
  for (const StageKind kind :
       {StageKind::TrenchDig, StageKind::FoundationPour, StageKind::WallsBelowDampCourse,
        StageKind::RoofCovering, StageKind::StrikeScaffold}) {
    model::Stage stage;
    stage.key.kind = kind;
    stage.name = "stage " + std::to_string(m.programme.stages.size() + 1);
    m.programme.stages.push_back(stage);
  }
  m.settingOut.outline = {{kShift - 4, -3}, {kShift + 4, -3}, {kShift + 4, 3}, {kShift - 4, 3}};
  m.settingOut.terrain.boundary = {
      {kShift - 6, -6}, {kShift + 6, -6}, {kShift + 6, 6}, {kShift - 6, 6}};
  addGround(m.works);
  Element concrete =
      thing("concrete", ElementKind::Foundation, Material::Concrete, at(StageKind::FoundationPour));
  addBox(concrete.solid, {-4, -3, -1}, {4, 3, -0.5});
  put(m.works, concrete);
  addWall(m.works, "south wall", {-4, -3, -0.5}, {4, -2.7, 2.5});
  addWall(m.works, "north wall", {-4, 2.7, -0.5}, {4, 3, 2.5});
  addWall(m.works, "west wall", {-4, -2.7, -0.5}, {-3.7, 2.7, 2.5});
  addWall(m.works, "east wall", {3.7, -2.7, -0.5}, {4, 2.7, 2.5});
  Element roof =
      thing("roof", ElementKind::RoofCovering, Material::Tile, at(StageKind::RoofCovering));
  addBox(roof.solid, {-4, -3, 2.5}, {4, 3, 2.7});
  put(m.works, roof);
  Element pole =
      thing("pole", ElementKind::Scaffold, Material::Steel, at(StageKind::WallsBelowDampCourse));
  addBox(pole.solid, {5, -5, 0}, {5.2, -4.8, 3});
  pole.removed = at(StageKind::StrikeScaffold);
  put(m.works, pole);
  return m;
}

}  // namespace support
