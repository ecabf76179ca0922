// What parapets take besides their brickwork.
#include <cmath>

#include "model/level_text.h"
#include "model/settingout/gable_edges.h"
#include "model/takeoff/items.h"
#include "model/takeoff/unit_rates.h"

namespace model {
namespace {

// Where the roof meets a parapet, along the slopes.
double alongParapet(const SettingOut& settingOut, size_t wall) {
  double run = 0;
  for (const SlopeEnd& slope : slopeEndsAt(settingOut, wall)) run += slope.to - slope.from;
  return run * std::sqrt(1 + settingOut.tanPitch * settingOut.tanPitch);
}

}  // namespace

void countParapets(const TakeoffInput& in, Tally& tally) {
  for (const Element& e : in.works.elements) {
    if (e.id.find("/parapet/") == std::string::npos) continue;
    const auto wall = in.settingOut.wallNamed(e.wall);
    if (e.kind == ElementKind::OuterLeaf && wall) {  // each end, and half of the slopes with it
      const double length = alongParapet(in.settingOut, *wall) / 2;
      tally.add({"Stepped cavity trays at parapets", Unit::Metre, waste::kMembrane, 0.1,
                 "along the slopes; built in, not drawn"},
                length, e.placed.stage);
      tally.add({"Flashing at parapets", Unit::Metre, waste::kMembrane, 0.1,
                 "where the covering meets the brickwork, along the slopes; not drawn"},
                length, {StageKind::RoofCovering});
    } else if (e.kind == ElementKind::DampCourse) {
      tally.add({"Damp course, under copings, " + lengthText(in.job.walls.total()) + " wide",
                 Unit::Metre, waste::kMembrane, 1, "over both leaves; laps in the allowance"},
                e.quantity.amount, e.placed.stage);
    } else if (e.kind == ElementKind::Coping && e.quantity.unit == Unit::Each) {
      tally.add({"Kneelers", Unit::Each, 0, 1, "specials, one at each foot of a parapet"},
                e.quantity.amount, e.placed.stage);
    } else if (e.kind == ElementKind::Coping) {
      tally.add({"Parapet coping", Unit::Metre, 0, 0.1, "along the slopes, with its joints"},
                e.quantity.amount, e.placed.stage);
    }
  }
}

}  // namespace model
