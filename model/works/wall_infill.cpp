#include "model/works/wall_infill.h"

#include <algorithm>

#include "model/walls/leaf_plan.h"
#include "model/walls/wall_names.h"

namespace model {

namespace {

// Check M16: NHBC Good Craftsmanship Guide, brickwork: the cavity clear at least 225 mm below the
// damp course.
constexpr double kClearCavity = 0.225;

}  // namespace

double lowestConcrete(const SettingOut& settingOut) {
  double low = settingOut.levels.dampCourse;
  for (const FoundationRun& run : settingOut.foundations) low = std::min(low, run.top);
  return low;
}

double insulationBottom(const SettingOut& settingOut) {
  return settingOut.levels.dampCourse - kClearCavity;
}

double cavityFillTop(const SettingOut& settingOut, size_t wall) {
  const WallLine& line = settingOut.walls[wall];
  return std::min(insulationBottom(settingOut),
                  levelsAlong(settingOut.terrain, line.start, line.end).low);
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

void buildCavityFill(const SettingOut& settingOut, const CavityPlan& plan, Works& works) {
  const WallLine& line = settingOut.walls[plan.wall];
  const WallLayer& layer = plan.layer;
  if (layer.empty()) return;
  const auto rects =
      aboveConcrete(settingOut, layer, plan.wall, cavityFillTop(settingOut, plan.wall));
  std::vector<Rect> holes = plan.openings;
  // Cast round the ties that are there already.
  for (const TiePlan& tie : plan.ties) holes.push_back(tie.rect());
  holes.insert(holes.end(), plan.sleeves.begin(), plan.sleeves.end());
  Element element;
  element.id = layerId(line, "cavity fill");
  element.name = layerName(line, "cavity fill");
  element.kind = ElementKind::CavityFill;
  element.material = Material::LeanConcrete;
  element.solid = layer.solid(fromRectangles(rects, holes));
  element.quantity = {volume(element.solid), Unit::CubicMetre};
  element.placed =
      upward({StageKind::CavityFill}, lowestConcrete(settingOut), insulationBottom(settingOut));
  element.wall = line.name;
  add(works, std::move(element));
}

}  // namespace model
