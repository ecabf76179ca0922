// Lintels: one over each opening in each leaf.
#include <algorithm>

#include "model/walls/leaf_plan.h"
#include "model/walls/wall_names.h"
#include "model/works/gable_rise.h"
#include "model/works/lintel_placement.h"
#include "model/works/parts.h"

namespace model {

namespace {

// Laid in a stage of their own they come one after another; otherwise each when the wall that rises
// has come up to its bearing. Always whole.
Placement placementOf(const Job& job, const SettingOut& settingOut, const LintelPlan& lintel) {
  const Vec3 bearing{0, 0, lintel.rect.z0};
  if (lintel.ownStage) {
    const double count = static_cast<double>(settingOut.openings.size());
    return whole(lintel.stage, static_cast<double>(lintel.opening) / count);
  }
  if (lintel.stage.kind == StageKind::Gables)
    return whenLeafReaches(job, settingOut, lintel.rect.z0, true);
  for (const Lift& lift : settingOut.lifts) {
    if (lift.storey == lintel.stage.storey && lift.number == lintel.stage.lift) {
      return whole(lintel.stage, fractionAt(upward(lintel.stage, lift.bottom, lift.top), bearing));
    }
  }
  return whole(lintel.stage);
}

}  // namespace

Placement whenLeafReaches(const Job& job, const SettingOut& settingOut, double level,
                          bool inGable) {
  const Vec3 bed{0, 0, level};
  if (inGable) {
    const Placement rise = gableRise(job, settingOut);
    return whole(rise.stage, fractionAt(rise, bed));
  }
  const Lift* at = &settingOut.lifts.front();
  for (const Lift& lift : settingOut.lifts)
    if (level > lift.bottom - 1e-6) at = &lift;
  const StageKey stage{StageKind::RunIn, at->storey, at->number};
  return whole(stage, fractionAt(upward(stage, at->bottom, at->top), bed));
}

void buildLintels(const Job& job, const SettingOut& settingOut, Works& works) {
  for (size_t wall = 0; wall < settingOut.walls.size(); ++wall) {
    const WallLine& line = settingOut.walls[wall];
    for (const LeafSide side : {LeafSide::Outer, LeafSide::Inner}) {
      const LeafPlan plan = leafPlan(job, settingOut, wall, side);
      for (const LintelPlan& lintel : plan.lintels) {
        const std::string over = openingLabel(settingOut, lintel.opening);
        Element element;
        element.id = layerId(line, nameOf(side)) + "/lintel over " + over;
        element.name = "Lintel over " + over + ", " + nameOf(side);
        element.kind = ElementKind::Lintel;
        element.material = Material::Concrete;
        element.solid = plan.layer.solid(fromRectangles({lintel.rect}, {}));
        element.quantity = {1, Unit::Each};
        element.placed = placementOf(job, settingOut, lintel);
        element.wall = line.name;
        add(works, std::move(element));
      }
    }
  }
}

}  // namespace model
