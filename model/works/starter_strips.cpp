#include "model/works/starter_strips.h"

#include <algorithm>

#include "model/walls/wall_names.h"
#include "model/works/junction_cuts.h"
#include "model/works/parts.h"

namespace model {

std::vector<StripPlan> starterStrips(const Job& job, const SettingOut& settingOut) {
  std::vector<StripPlan> strips;
  for (const JunctionPlan& plan : junctionPlans(job, settingOut)) {
    if (job.junctions[plan.junction].kind != JunctionKind::StarterTies) continue;
    const LeafPlan leaf = leafPlan(job, settingOut, plan.wall, LeafSide::Outer);
    const double deep = leaf.layer.thickness(), width = std::min(kStripWidth, deep);
    StripPlan strip;
    strip.plan = plan;
    strip.d0 = (deep - width) / 2;
    strip.d1 = strip.d0 + width;
    const std::vector<double> ties = starterTies(job, settingOut, plan);
    for (const Lift& lift : settingOut.lifts) {
      const double bottom = std::max(plan.low, leafStop(job, settingOut, leaf, lift.bottom));
      const double top = std::min(plan.top, leafStop(job, settingOut, leaf, lift.top));
      if (top - bottom < 1e-6) continue;
      const auto held = static_cast<int>(std::count_if(ties.begin(), ties.end(), [&](double bed) {
        return bed > bottom - 1e-6 && bed < top - 1e-6;
      }));
      // What the last ties leave over goes with the length under it: nobody fixes a strip again
      // for a few millimetres that hold nothing.
      if (held == 0 && strip.lengths.empty()) continue;
      if (!strip.lengths.empty() &&
          (held == 0 || strip.lengths.back().stage.storey == lift.storey)) {
        strip.lengths.back().top = top;
        strip.lengths.back().ties += held;
      } else {
        strip.lengths.push_back(
            {bottom, top, {StageKind::RaiseCorners, lift.storey, lift.number}, held});
      }
    }
    if (!strip.lengths.empty()) strips.push_back(std::move(strip));
  }
  return strips;
}

void buildStarterStrips(const Job& job, const SettingOut& settingOut, Works& works) {
  for (const StripPlan& strip : starterStrips(job, settingOut)) {
    const JunctionPlan& plan = strip.plan;
    const WallLine& line = settingOut.walls[plan.wall];
    const WallJunction& junction = job.junctions[plan.junction];
    // On the face where there is room for it, else let in.
    const double from = std::max(0.0, plan.gap - kStripThickness);
    const Polygon place =
        beyondEnd(settingOut, plan, from, from + kStripThickness, strip.d0, strip.d1);
    const std::string corner = settingOut.corners[plan.atStart ? line.from : line.to].letter;
    for (const StripPlan::Length& length : strip.lengths) {
      const std::string& storey = job.storeys[static_cast<size_t>(length.stage.storey)].name;
      Element element;
      element.id = layerId(line, "starter strip") + "/corner " + corner + "/" + storey;
      element.name = layerName(line, "starter strip") + " on " + junction.building + ", corner " +
                     corner + (job.storeys.size() > 1 ? ", " + storey : "");
      element.kind = ElementKind::StarterStrip;
      element.material = Material::Steel;
      element.solid = prism({place, {}}, length.bottom, length.top);
      element.quantity = {length.top - length.bottom, Unit::Metre};
      element.placed = whole(length.stage);
      element.wall = line.name;
      add(works, std::move(element));
    }
  }
}

}  // namespace model
