// The damp-proof course: a strip on each leaf, left out where a door goes through it.
#include "model/walls/leaf_plan.h"
#include "model/walls/wall_names.h"
#include "model/works/parts.h"
#include "model/works/wall_infill.h"

namespace model {

void buildDampCourse(const Job& job, const SettingOut& settingOut, Works& works) {
  const double top = settingOut.levels.dampCourse;
  for (size_t wall = 0; wall < settingOut.walls.size(); ++wall) {
    const WallLine& line = settingOut.walls[wall];
    for (const LeafSide side : {LeafSide::Outer, LeafSide::Inner}) {
      const LeafPlan plan = leafPlan(job, settingOut, wall, side);
      if (plan.layer.empty()) continue;
      std::vector<Rect> gaps;
      for (const Rect& opening : plan.openings) {
        if (opening.z0 <= top + 1e-6 && opening.z1 > top) {
          gaps.push_back({opening.s0, top - 1, opening.s1, top + 1});
        }
      }
      const Rect strip{plan.layer.from, top - kDampCourseThickness, plan.layer.to, top};
      Element element;
      element.id = layerId(line, "damp course") + "/" + nameOf(side);
      element.name = layerName(line, "damp course") + ", " + nameOf(side);
      element.kind = ElementKind::DampCourse;
      element.material = Material::Membrane;
      element.solid = plan.layer.solid(fromRectangles({strip}, gaps));
      element.quantity = {volume(element.solid) / (kDampCourseThickness * plan.layer.thickness()),
                          Unit::Metre};
      element.placed =
          whole({StageKind::DampCourse},
                static_cast<double>(wall) / static_cast<double>(settingOut.walls.size()));
      element.wall = line.name;
      add(works, std::move(element));
    }
  }
}

}  // namespace model
