#include "model/works/cavity_barriers.h"

#include <algorithm>

#include "model/level_text.h"
#include "model/walls/gable_profile.h"
#include "model/walls/parapet_line.h"
#include "model/walls/wall_names.h"
#include "model/works/across_cavity.h"
#include "model/works/cavity_plan.h"
#include "model/works/gable_rise.h"
#include "model/works/wall_infill.h"

namespace model {

namespace {

class Barriers {
 public:
  Barriers(const Job& job, const SettingOut& settingOut, const CavityPlan& plan, Works& works)
      : job_(job),
        settingOut_(settingOut),
        plan_(plan),
        line_(settingOut.walls[plan.wall]),
        works_(works) {}

  void build() {
    std::vector<Rect> holes = plan_.openings;
    for (const CloserPlan& closer : plan_.closers) holes.push_back(closer.rect);
    for (const TrayPlan& tray : plan_.trays) holes.push_back(tray.rect());
    holes.insert(holes.end(), plan_.sleeves.begin(), plan_.sleeves.end());
    for (const BarrierPlan& barrier : plan_.barriers) {
      rise(barrier, holes);
      holes.push_back(barrier.rect);
    }
  }

 private:
  void rise(const BarrierPlan& barrier, const std::vector<Rect>& holes) {
    const WallLayer& layer = plan_.layer;
    std::vector<Rect> whole;
    if (barrier.upright) {
      for (Rect r : aboveConcrete(settingOut_, layer, plan_.wall, barrier.rect.z1)) {
        r = {std::max(r.s0, barrier.rect.s0), std::max(r.z0, barrier.rect.z0),
             std::min(r.s1, barrier.rect.s1), r.z1};
        if (!r.empty()) whole.push_back(r);
      }
    } else {
      whole = {barrier.rect};
    }
    double from = -1e3;
    for (const Lift& lift : settingOut_.lifts) {
      const double to = std::min(lift.top, plan_.levelTop);
      std::vector<Rect> parts;
      for (Rect r : whole) {
        r.z0 = std::max(r.z0, from);
        r.z1 = std::min(r.z1, to);
        if (!r.empty()) parts.push_back(r);
      }
      Solid solid = layer.solid(fromRectangles(parts, holes));
      if (barrier.upright) solid.append(besideTrays(barrier, lift.bottom, lift.top));
      put(barrier, liftId(job_, lift), liftName(job_, lift), std::move(solid),
          upward({StageKind::RunIn, lift.storey, lift.number}, lift.bottom, lift.top));
      from = to;
    }
    if (plan_.slope.empty() || !barrier.upright) return;
    const WallLayer slit = layer.between(barrier.rect.s0, barrier.rect.s1);
    Solid solid = gableSolid(slit, gableLineOn(job_, settingOut_, slit), plan_.levelTop, holes);
    solid.append(besideTrays(barrier, settingOut_.lifts.back().top, 1e9));
    put(barrier, "gable", "gable", std::move(solid), gableRise(job_, settingOut_));
  }

  // Cut to the slope of the trays that go past an upright one, over and under them; of those that
  // begin between two levels.
  Solid besideTrays(const BarrierPlan& barrier, double bottom, double top) const {
    const WallLayer& layer = plan_.layer;
    const double out = layer.outer, in = layer.inner;
    Solid solid;
    for (const TrayPlan& tray : plan_.trays) {
      if (tray.low < bottom - 1e-6 || tray.low > top - 1e-6) continue;
      const double low = tray.low + kTrayThickness, high = tray.high + kTrayThickness;
      double s0 = std::max(barrier.rect.s0, tray.from), s1 = std::min(barrier.rect.s1, tray.to);
      if (s1 - s0 > 1e-6)
        solid.append(alongLayer(layer, {{out, tray.low}, {in, tray.low}, {in, tray.high}}, s0, s1));
      s0 = std::max(s0, tray.from + kTrayThickness);
      s1 = std::min(s1, tray.to - kTrayThickness);
      if (s1 - s0 > 1e-6)
        solid.append(alongLayer(layer, {{out, low}, {in, high}, {out, high}}, s0, s1));
    }
    return solid;
  }

  void put(const BarrierPlan& barrier, const std::string& part, const std::string& name,
           Solid solid, const Placement& placed) {
    const std::string which = "cavity barrier " + std::to_string(barrier.barrier + 1);
    const Rect& r = barrier.rect;
    const double width = barrier.upright ? r.s1 - r.s0 : r.z1 - r.z0;
    Element element;
    element.id = layerId(line_, which) + "/" + part;
    element.name = layerName(line_, which) + (barrier.upright ? ", upright, " : ", level, ") +
                   lengthText(width) + " wide, " + name;
    element.kind = ElementKind::CavityBarrier;
    element.material = Material::Insulation;
    element.quantity = {volume(solid) / (plan_.layer.thickness() * width), Unit::Metre};
    element.solid = std::move(solid);
    element.placed = placed;
    element.wall = line_.name;
    add(works_, std::move(element));
  }

  const Job& job_;
  const SettingOut& settingOut_;
  const CavityPlan& plan_;
  const WallLine& line_;
  Works& works_;
};

}  // namespace

std::vector<BarrierPlan> barrierPlan(const Job& job, const SettingOut& settingOut,
                                     const WallLayer& layer, size_t wall, double levelTop) {
  const WallLine& line = settingOut.walls[wall];
  const bool gable = line.eaves == EavesKind::Gable;
  std::vector<BarrierPlan> plan;
  for (const bool upright : {true, false}) {
    for (size_t i = 0; i < job.cavityBarriers.size(); ++i) {
      const CavityBarrier& barrier = job.cavityBarriers[i];
      if (settingOut.wallNamed(barrier.wall) != wall || barrier.at.has_value() != upright) continue;
      Rect rect{layer.from, barrier.level.value_or(0), layer.to, 0};
      rect.z1 = std::min(rect.z0 + barrier.width, levelTop);
      if (upright) {
        // Without a corner that it is measured from: from the one that the file's name of the wall
        // begins with.
        const std::string first =
            barrier.from.empty() ? barrier.wall.substr(0, barrier.wall.find('-')) : barrier.from;
        const bool fromEnd = settingOut.cornerNamed(first) == line.to;
        const double at = fromEnd ? line.length - *barrier.at : *barrier.at;
        rect = {std::max(at - barrier.width / 2, layer.from), cavityFillTop(settingOut, wall),
                std::min(at + barrier.width / 2, layer.to),
                gable ? gableTop(job, settingOut) : levelTop};
      }
      if (!rect.empty()) plan.push_back({i, upright, rect});
    }
  }
  return plan;
}

void buildCavityBarriers(const Job& job, const SettingOut& settingOut, const CavityPlan& plan,
                         Works& works) {
  if (!plan.empty()) Barriers(job, settingOut, plan, works).build();
}

}  // namespace model
