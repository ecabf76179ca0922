// Air bricks and their sleeves.
#include "model/walls/wall_names.h"
#include "model/works/cavity_parts.h"
#include "model/works/lintel_placement.h"
#include "model/works/wall_infill.h"

namespace model {

namespace {

constexpr double kSleeveWall = 0.005;  // common practice, no source
constexpr int kSlots = 6;              // upright openings in the face of an air brick

// The block that fills its place, with slots through it.
Solid airBrickOf(const WallLayer& layer, const Rect& r, double joint) {
  constexpr double kRim = 0.015;
  const Rect clay{r.s0 + joint, r.z0 + joint, r.s1 - joint, r.z1};
  const double pitch = (clay.s1 - clay.s0 - kRim) / kSlots;
  std::vector<Rect> slots;
  for (int i = 0; i < kSlots; ++i) {
    const double s = clay.s0 + kRim + i * pitch;
    slots.push_back({s, clay.z0 + kRim, s + pitch - kRim, clay.z1 - kRim});
  }
  return layer.solid(fromRectangles({r}, slots));
}

Solid sleeveOf(const WallLayer& layer, const Rect& r) {
  const Rect bore{r.s0 + kSleeveWall, r.z0 + kSleeveWall, r.s1 - kSleeveWall, r.z1 - kSleeveWall};
  return layer.solid(fromRectangles({r}, {bore}));
}

}  // namespace

void buildAirBricks(const Job& job, const SettingOut& settingOut, const CavityPlan& plan,
                    Works& works) {
  const WallLine& line = settingOut.walls[plan.wall];
  const double damp = settingOut.levels.dampCourse;
  for (const VentPlan& vent : plan.outer.vents) {
    const StageKey below{StageKind::WallsBelowDampCourse};
    const double foot = lowestConcrete(settingOut);
    const Placement placed =
        vent.rect.z0 < damp - kDampCourseThickness - 1e-6
            ? whole(below, fractionAt(upward(below, foot, damp - kDampCourseThickness),
                                      {0, 0, vent.rect.z0}))
            : whenLeafReaches(job, settingOut, vent.rect.z0, false);
    const std::string number = std::to_string(vent.airBrick + 1);
    const auto put = [&](const char* what, ElementKind kind, Material material, Solid solid) {
      Element element;
      element.id = layerId(line, what) + " " + number;
      element.name = layerName(line, what) + " " + number;
      element.kind = kind;
      element.material = material;
      element.solid = std::move(solid);
      element.quantity = {1, Unit::Each};
      element.placed = placed;
      element.wall = line.name;
      add(works, std::move(element));
    };
    put("air brick", ElementKind::AirBrick, Material::Clay,
        airBrickOf(plan.outer.layer, vent.rect, job.walls.joint));
    const WallLayer through =
        layerOf(settingOut, plan.wall, plan.layer.outer, settingOut.faceDistances.innerFace);
    for (const VentPlan& inner : plan.inner.vents)
      if (inner.airBrick == vent.airBrick)
        put("vent sleeve", ElementKind::VentSleeve, Material::Membrane,
            sleeveOf(through, vent.rect));
  }
}

}  // namespace model
