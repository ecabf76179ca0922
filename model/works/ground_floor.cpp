// The ground floor: a slab on hardcore or beams over a void, beams over the cellar, and what
// finishes it.
#include <algorithm>

#include "model/works/parts.h"

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

void put(Works& works, const FloorPart& part, const Regions& area, double bottom, double top,
         const Placement& placed) {
  if (area.empty() || top - bottom < 1e-6) return;
  Element element;
  element.id = part.id;
  element.name = part.name;
  element.kind = part.kind;
  element.material = part.material;
  element.solid = prism(area, bottom, top);
  element.quantity = {volume(element.solid), Unit::CubicMetre};
  if (part.unit == Unit::SquareMetre) element.quantity = {model::area(area), Unit::SquareMetre};
  element.placed = placed;
  add(works, std::move(element));
}

}  // namespace

void buildGroundFloor(const Job& job, const SettingOut& settingOut, Works& works) {
  const Levels& levels = settingOut.levels;
  const Polygon inside = settingOut.ring(job.walls.total());
  const Regions whole{{inside, {}}};
  Regions overCellar, rest = whole;
  if (!settingOut.cellarOutline.empty()) {
    const Regions cellar{{settingOut.cellarOutline, {}}};
    overCellar = intersect(whole, cellar);
    rest = subtract(whole, cellar);
  }
  const double top = levels.structuralFloor[0], bottom = levels.slabUnderside;
  put(works,
      {"floor over cellar", "Floor over the cellar", ElementKind::BeamFloor, Material::Concrete,
       Unit::SquareMetre},
      overCellar, bottom, top, acrossPlan(StageKind::FloorOverCellar, inside, 0, 1));
  const Placement laid = acrossPlan(StageKind::GroundSlab, inside, 0, 1);
  if (job.groundFloor.kind == GroundFloorKind::Slab) {
    put(works,
        {"ground slab", "Ground floor slab", ElementKind::GroundSlab, Material::Concrete,
         Unit::CubicMetre},
        rest, bottom, top, laid);
  } else {
    put(works,
        {"ground floor beams", "Ground floor, beams and blocks", ElementKind::BeamFloor,
         Material::Concrete, Unit::SquareMetre},
        rest, bottom, top, laid);
  }
  const double insulated = top + job.groundFloor.insulation;
  put(works,
      {"ground floor insulation", "Ground floor insulation", ElementKind::FloorInsulation,
       Material::Insulation, Unit::SquareMetre},
      whole, top, insulated, acrossPlan(StageKind::FloorFinish, inside, 0.4, 0.6));
  put(works,
      {"ground floor screed", "Ground floor screed", ElementKind::Screed, Material::Screed,
       Unit::SquareMetre},
      whole, insulated, insulated + job.groundFloor.screed,
      acrossPlan(StageKind::FloorFinish, inside, 0.6, 1));
}

}  // namespace model
