// Cavity trays over openings, level barriers and steps of the damp course, each with a stop end
// where it ends.
#include <algorithm>

#include "model/level_text.h"
#include "model/walls/wall_names.h"
#include "model/works/across_cavity.h"
#include "model/works/cavity_parts.h"
#include "model/works/lintel_placement.h"

namespace model {

namespace {

const char* kindOf(TrayPlan::Over over) {
  switch (over) {
    case TrayPlan::Over::Lintel:
      return "cavity tray";
    case TrayPlan::Over::Barrier:
      return "long cavity tray";
    case TrayPlan::Over::Step:
      break;
  }
  return "damp course tray";
}

// ", with stop ends", ", with a stop end at corner B" ...
std::string endsOf(const SettingOut& settingOut, const WallLine& line, const TrayPlan& tray) {
  if (tray.stopFrom && tray.stopTo) return ", with stop ends";
  if (!tray.stopFrom && !tray.stopTo) return ", mitred at both corners";
  const size_t corner = tray.stopFrom ? line.to : line.from;
  return ", with a stop end, mitred at corner " + settingOut.corners[corner].letter;
}

}  // namespace

TrayNames namesOf(const SettingOut& settingOut, const CavityPlan& plan, const TrayPlan& tray) {
  const WallLine& line = settingOut.walls[plan.wall];
  if (tray.over == TrayPlan::Over::Lintel) {
    const std::string over = openingLabel(settingOut, tray.opening);
    return {over, over};
  }
  if (tray.over == TrayPlan::Over::Step) {
    const DampStepPlan& step = plan.outer.dampSteps[tray.step];
    const bool more = plan.outer.dampSteps.size() > 1;
    const std::string id = "step " + std::to_string(step.step + 1);
    return {id, (more ? id + " of the damp course" : "the stepped damp course") + ", wall " +
                    line.name};
  }
  const BarrierPlan& barrier = plan.barriers[tray.barrier];
  size_t level = 0, pieces = 0;
  for (const BarrierPlan& other : plan.barriers) level += other.upright ? 0 : 1;
  for (const TrayPlan& other : plan.trays)
    pieces += other.over == tray.over && other.barrier == tray.barrier ? 1 : 0;
  TrayNames names;
  names.id = "cavity barrier " + std::to_string(barrier.barrier + 1);
  names.over = "the level barrier";
  if (level > 1) names.over += " at " + levelText(barrier.rect.z0);
  names.over += ", wall " + line.name;
  if (pieces > 1) {
    const std::string piece = std::to_string(tray.piece + 1);
    names.id += "/" + piece;
    names.over += ", " + piece + " of " + std::to_string(pieces);
  }
  return names;
}

void buildCavityTrays(const Job& job, const SettingOut& settingOut, const CavityPlan& plan,
                      Works& works) {
  const WallLine& line = settingOut.walls[plan.wall];
  const double out = plan.layer.outer, in = plan.layer.inner, thick = kTrayThickness;
  for (const TrayPlan& tray : plan.trays) {
    const TrayNames names = namesOf(settingOut, plan, tray);
    Element element;
    element.solid = alongLayer(
        plan.layer,
        {{out, tray.low}, {in, tray.high}, {in, tray.high + thick}, {out, tray.low + thick}},
        tray.from, tray.to);
    const Polygon stop{{out, tray.low + thick}, {in, tray.high + thick}, {out, tray.high + thick}};
    if (tray.stopFrom) element.solid.append(alongWall(line, stop, tray.from, tray.from + thick));
    if (tray.stopTo) element.solid.append(alongWall(line, stop, tray.to - thick, tray.to));
    element.id = layerId(line, kindOf(tray.over)) + "/" + names.id;
    element.name = "Cavity tray over " + names.over + endsOf(settingOut, line, tray);
    element.kind = ElementKind::CavityTray;
    element.material = Material::Membrane;
    const FacePair from = plan.layer.through({tray.from, 0}), to = plan.layer.through({tray.to, 0});
    element.quantity = {(to.front.x + to.back.x - from.front.x - from.back.x) / 2, Unit::Metre};
    // With the run, not with its lintel: the inner leaf that it leans on is not there before.
    element.placed =
        whenLeafReaches(job, settingOut, tray.low, tray.low > plan.outer.levelTop - 1e-6);
    element.wall = line.name;
    add(works, std::move(element));
  }
}

}  // namespace model
