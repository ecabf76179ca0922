// Cavity trays over openings, each with a stop end at either end.
#include "model/walls/wall_names.h"
#include "model/works/across_cavity.h"
#include "model/works/cavity_parts.h"
#include "model/works/lintel_placement.h"

namespace model {

void buildCavityTrays(const Job& job, const SettingOut& settingOut, const CavityPlan& plan,
                      Works& works) {
  const WallLine& line = settingOut.walls[plan.wall];
  const double out = plan.layer.outer, in = plan.layer.inner, thick = kTrayThickness;
  for (const TrayPlan& tray : plan.trays) {
    const std::string over = openingLabel(settingOut, tray.opening);
    Element element;
    element.solid = alongWall(
        line, {{out, tray.low}, {in, tray.high}, {in, tray.high + thick}, {out, tray.low + thick}},
        tray.from, tray.to);
    const Polygon stop{{out, tray.low + thick}, {in, tray.high + thick}, {out, tray.high + thick}};
    element.solid.append(alongWall(line, stop, tray.from, tray.from + thick));
    element.solid.append(alongWall(line, stop, tray.to - thick, tray.to));
    element.id = layerId(line, "cavity tray") + "/" + over;
    element.name = "Cavity tray over " + over + ", with stop ends";
    element.kind = ElementKind::CavityTray;
    element.material = Material::Membrane;
    element.quantity = {tray.to - tray.from, Unit::Metre};
    // With the run, not with its lintel: the inner leaf that it leans on is not there before.
    element.placed =
        whenLeafReaches(job, settingOut, tray.low, tray.low > plan.outer.levelTop - 1e-6);
    element.wall = line.name;
    add(works, std::move(element));
  }
}

}  // namespace model
