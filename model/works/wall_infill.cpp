#include "model/works/wall_infill.h"

#include <algorithm>

#include "model/walls/gable_profile.h"
#include "model/walls/leaf_plan.h"
#include "model/walls/wall_names.h"
#include "model/works/cavity_closers.h"

namespace model {

namespace {

// Check M16: NHBC Good Craftsmanship Guide, brickwork: the cavity clear at least 225 mm below the
// damp course.
constexpr double kClearCavity = 0.225;

Element insulationPart(const WallLine& wall, const WallLayer& layer, const std::string& part,
                       const std::string& name, Solid solid, const Placement& placed) {
  Element element;
  element.id = layerId(wall, "cavity insulation") + "/" + part;
  element.name = layerName(wall, "cavity insulation") + ", " + name;
  element.kind = ElementKind::CavityInsulation;
  element.material = Material::Insulation;
  element.quantity = {volume(solid) / layer.thickness(), Unit::SquareMetre};
  element.solid = std::move(solid);
  element.placed = placed;
  element.wall = wall.name;
  return element;
}

}  // namespace

double lowestConcrete(const SettingOut& settingOut) {
  double low = settingOut.levels.dampCourse;
  for (const FoundationRun& run : settingOut.foundations) low = std::min(low, run.top);
  return low;
}

double insulationBottom(const SettingOut& settingOut) {
  return settingOut.levels.dampCourse - kClearCavity;
}

std::vector<Rect> aboveConcrete(const SettingOut& settingOut, const WallLayer& layer, size_t wall,
                                double top) {
  std::vector<Rect> rects;
  for (const FoundationRun& run : settingOut.foundations) {
    if (run.wall != wall) continue;
    // The first and last runs go on to the mitres.
    const double from = run.from <= 0 ? layer.from : std::max(run.from, layer.from);
    const double to = run.to >= layer.wall->length ? layer.to : std::min(run.to, layer.to);
    const Rect rect{from, run.top, to, top};
    if (!rect.empty()) rects.push_back(rect);
  }
  return rects;
}

void buildCavityFill(const Job& job, const SettingOut& settingOut, size_t wall, Works& works) {
  const WallLine& line = settingOut.walls[wall];
  const double outer = job.walls.outerLeaf;
  const WallLayer layer = layerOf(settingOut, wall, outer, outer + job.walls.cavity);
  if (layer.empty()) return;
  const double top = std::min(insulationBottom(settingOut),
                              levelsAlong(settingOut.terrain, line.start, line.end).low);
  const auto rects = aboveConcrete(settingOut, layer, wall, top);
  Element element;
  element.id = layerId(line, "cavity fill");
  element.name = layerName(line, "cavity fill");
  element.kind = ElementKind::CavityFill;
  element.material = Material::LeanConcrete;
  element.solid = layer.solid(fromRectangles(rects, openingsIn(settingOut, layer, wall)));
  element.quantity = {volume(element.solid), Unit::CubicMetre};
  element.placed =
      upward({StageKind::CavityFill}, lowestConcrete(settingOut), insulationBottom(settingOut));
  element.wall = line.name;
  add(works, std::move(element));
}

void buildCavityInsulation(const Job& job, const SettingOut& settingOut, size_t wall,
                           Works& works) {
  const WallLine& line = settingOut.walls[wall];
  const double back = settingOut.faceDistances.innerLeafFront;
  const WallLayer layer = layerOf(settingOut, wall, back - job.walls.insulation, back);
  if (layer.empty()) return;
  const double levelTop = levelTopOf(job, settingOut, layer, wall, false);
  auto holes = openingsIn(settingOut, layer, wall);
  for (const CloserPlan& closer : closerPlan(job, settingOut, wall)) holes.push_back(closer.rect);
  bool first = true;
  for (const Lift& lift : settingOut.lifts) {
    const double top = std::min(lift.top, levelTop);
    std::vector<Rect> rects{{layer.from, lift.bottom, layer.to, top}};
    if (first) {
      // The first boards start in the clear cavity below the damp course.
      rects = aboveConcrete(settingOut, layer, wall, top);
      for (Rect& r : rects) r.z0 = std::max(r.z0, insulationBottom(settingOut));
    }
    std::erase_if(rects, [](const Rect& r) { return r.empty(); });
    const double from = first ? insulationBottom(settingOut) : lift.bottom;
    first = false;
    add(works,
        insulationPart(line, layer, liftId(job, lift), liftName(job, lift),
                       layer.solid(fromRectangles(rects, holes)),
                       upward({StageKind::RunIn, lift.storey, lift.number}, from, lift.top)));
  }
  if (line.eaves != EavesKind::Gable) return;
  add(works, insulationPart(line, layer, "gable", "gable",
                            gableSolid(layer, rafterLineOn(settingOut, layer), levelTop, holes),
                            upward({StageKind::Gables}, settingOut.levels.outerLeafTop,
                                   settingOut.levels.ridge)));
}

}  // namespace model
