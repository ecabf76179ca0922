// The damp-proof course: a strip on each leaf, left out where a door goes through it, and in the
// outer leaf a second one where it is stepped up.
#include "model/level_text.h"
#include "model/walls/leaf_plan.h"
#include "model/walls/wall_names.h"
#include "model/works/lintel_placement.h"
#include "model/works/parts.h"
#include "model/works/wall_infill.h"

namespace model {

namespace {

// Over a step one strip in its bed and up both ends, laid when the run comes up to it.
void buildSteps(const Job& job, const SettingOut& settingOut, const LeafPlan& plan, Works& works) {
  const WallLine& line = settingOut.walls[plan.wall];
  for (const DampStepPlan& step : plan.dampSteps) {
    const int courses = job.dampCourseSteps[step.step].courses;
    Element element;
    element.id = layerId(line, "damp course") + "/step " + std::to_string(step.step + 1);
    element.name = layerName(line, "damp course") + ", " + nameOf(plan.side) + ", stepped up " +
                   std::to_string(courses) + (courses == 1 ? " course to " : " courses to ") +
                   levelText(step.level);
    element.kind = ElementKind::DampCourse;
    element.material = Material::Membrane;
    element.solid = plan.layer.solid(fromRectangles(step.strips(), {}));
    element.quantity = {step.to - step.from + 2 * (step.level - step.foot), Unit::Metre};
    element.placed = whenLeafReaches(job, settingOut, step.level, false);
    element.wall = line.name;
    add(works, std::move(element));
  }
}

}  // namespace

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
      buildSteps(job, settingOut, plan, works);
    }
  }
}

}  // namespace model
