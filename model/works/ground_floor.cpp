// The ground floor: a slab on hardcore or beams over a void, beams over the cellar, and what
// finishes it.
#include "model/works/ground_floor.h"

#include <algorithm>

#include "model/works/edge_protection.h"
#include "model/works/parts.h"
#include "model/works/stair_well.h"

namespace model {

namespace {

struct FloorPart {
  const char *id, *name;
  ElementKind kind;
  Material material;
  Unit unit;
};

Placement acrossPlan(StageKind stage, const Polygon& area, double begin, double end) {
  Placement placement;
  placement.stage = {stage};
  placement.begin = begin;
  placement.end = end;
  placement.direction = {1, 0, 0};
  placement.low = 1e300;
  placement.high = -1e300;
  for (const Vec2& p : area) {
    placement.low = std::min(placement.low, p.x);
    placement.high = std::max(placement.high, p.x);
  }
  return placement;
}

// The floor from `bottom` to `top`, thinner where the foundations' concrete stands up into it.
Solid floorSolid(const SettingOut& out, const Regions& area, double bottom, double top) {
  Regions rest = area;
  Solid thin;
  for (const HighConcrete& high : concreteAbove(out, bottom)) {
    const Regions over = intersect(rest, high.area);
    rest = subtract(rest, high.area);
    if (!over.empty() && top - high.top > 1e-3) thin.append(prism(over, high.top, top));
  }
  Solid solid = rest.empty() ? Solid{} : prism(rest, bottom, top);
  solid.append(thin);
  return solid;
}

void put(const SettingOut& out, Works& works, const FloorPart& part, const Regions& area,
         double bottom, double top, const Placement& placed) {
  if (area.empty() || top - bottom < 1e-6) return;
  Element element;
  element.id = part.id;
  element.name = part.name;
  element.kind = part.kind;
  element.material = part.material;
  element.solid = floorSolid(out, area, bottom, top);
  element.quantity = {volume(element.solid), Unit::CubicMetre};
  if (part.unit == Unit::SquareMetre) element.quantity = {model::area(area), Unit::SquareMetre};
  element.placed = placed;
  add(works, std::move(element));
}

}  // namespace

std::vector<HighConcrete> concreteAbove(const SettingOut& out, double level) {
  std::vector<HighConcrete> high;
  const bool any =
      std::any_of(out.foundations.begin(), out.foundations.end(),
                  [&](const auto& run) { return !run.onCellar && run.top > level + 1e-6; });
  if (!any) return high;
  for (size_t i = 0; i < out.foundations.size(); ++i) {
    const FoundationRun& run = out.foundations[i];
    if (!run.onCellar && run.top > level + 1e-6) high.push_back({foundationArea(out, i), run.top});
  }
  return high;
}

Regions groundSlabArea(const SettingOut& settingOut) {
  const Regions whole{{settingOut.ring(settingOut.faceDistances.innerFace), {}}};
  if (settingOut.cellarOutline.empty()) return whole;
  return subtract(whole, {{settingOut.cellarOutline, {}}});
}

Placement groundFloorLaid(const Job& job, const SettingOut& settingOut) {
  const bool slab = job.groundFloor.kind == GroundFloorKind::Slab;
  return acrossPlan(StageKind::GroundSlab, settingOut.ring(settingOut.faceDistances.innerFace),
                    slab ? kBeforePour : 0, 1);
}

void buildGroundFloor(const Job& job, const SettingOut& settingOut, Works& works) {
  const Levels& levels = settingOut.levels;
  const Polygon inside = settingOut.ring(settingOut.faceDistances.innerFace);
  // Stairs from the cellar come up through all of it.
  Regions whole{{inside, {}}};
  for (const StairFlight* flight : flightsTo(settingOut, 0))
    whole = subtract(whole, {{wellCut(job, settingOut, *flight), {}}});
  const Regions rest = groundSlabArea(settingOut);
  Regions overCellar;
  if (!settingOut.cellarOutline.empty())
    overCellar = intersect(whole, {{settingOut.cellarOutline, {}}});
  const double top = levels.structuralFloor[0], bottom = levels.slabUnderside;
  put(settingOut, works,
      {"floor over cellar", "Floor over the cellar", ElementKind::BeamFloor, Material::Concrete,
       Unit::SquareMetre},
      overCellar, bottom, top, acrossPlan(StageKind::FloorOverCellar, inside, 0, 1));
  const Placement laid = groundFloorLaid(job, settingOut);
  if (job.groundFloor.kind == GroundFloorKind::Slab) {
    put(settingOut, works,
        {"ground slab", "Ground floor slab", ElementKind::GroundSlab, Material::Concrete,
         Unit::CubicMetre},
        rest, bottom, top, laid);
  } else {
    put(settingOut, works,
        {"ground floor beams", "Ground floor, beams and blocks", ElementKind::BeamFloor,
         Material::Concrete, Unit::SquareMetre},
        rest, bottom, top, laid);
  }
  const double insulated = top + job.groundFloor.insulation;
  put(settingOut, works,
      {"ground floor insulation", "Ground floor insulation", ElementKind::FloorInsulation,
       Material::Insulation, Unit::SquareMetre},
      whole, top, insulated, acrossPlan(StageKind::FloorFinish, inside, 0.4, 0.6));
  put(settingOut, works,
      {"ground floor screed", "Ground floor screed", ElementKind::Screed, Material::Screed,
       Unit::CubicMetre},
      whole, insulated, insulated + job.groundFloor.screed,
      acrossPlan(StageKind::FloorFinish, inside, 0.6, 1));
}

}  // namespace model
