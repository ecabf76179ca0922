#include "model/works/cavity_plan.h"

#include <algorithm>

#include "model/bond/course_bands.h"
#include "model/walls/parapet_line.h"

namespace model {

Rect TrayPlan::rect() const { return {from, low, to, high + kTrayThickness}; }

Rect TiePlan::rect() const {
  return {s - kTieWidth / 2, std::min(outer, inner) - kTieThickness / 2, s + kTieWidth / 2,
          std::max(outer, inner) + kTieThickness / 2};
}

double CavityPlan::topBetween(double s0, double s1) const {
  return slope.empty() ? levelTop : lowestBetween(slope, s0, s1);
}

std::vector<BlockBed> blockBeds(const Job& job, const SettingOut& settingOut,
                                const LeafPlan& inner) {
  constexpr double kLeast = 0.050;  // a thinner course is no block, and holds no tie
  const bool gable = settingOut.walls[inner.wall].eaves == EavesKind::Gable;
  const double top = gable ? gableTop(job, settingOut) : inner.levelTop;
  const double damp = settingOut.levels.dampCourse;
  std::vector<BlockBed> beds;
  for (const CourseBand& band : courseBands(job, settingOut, inner, top)) {
    if (band.top - band.bottom < kLeast) continue;
    BlockBed bed;
    bed.level = band.bottom;
    if (band.bottom < damp - kDampCourseThickness / 2) {
      bed.part = TiePlan::Part::BelowDampCourse;
    } else if (gable && band.bottom > inner.levelTop - 1e-6) {
      bed.part = TiePlan::Part::Gable;
    } else {
      while (bed.lift + 1 < settingOut.lifts.size() &&
             settingOut.lifts[bed.lift].top < band.bottom + 1e-6)
        ++bed.lift;
    }
    beds.push_back(bed);
  }
  return beds;
}

CavityPlan cavityPlan(const Job& job, const SettingOut& settingOut, size_t wall) {
  CavityPlan plan;
  plan.wall = wall;
  plan.layer = layerOf(settingOut, wall, settingOut.faceDistances.outerLeafBack,
                       settingOut.faceDistances.innerLeafFront);
  plan.outer = leafPlan(job, settingOut, wall, LeafSide::Outer);
  plan.inner = leafPlan(job, settingOut, wall, LeafSide::Inner);
  if (plan.empty()) return plan;
  plan.levelTop = levelTopOf(job, settingOut, plan.layer, wall, false);
  if (settingOut.walls[wall].eaves == EavesKind::Gable)
    plan.slope = gableLineOn(job, settingOut, plan.layer);
  plan.openings = openingsIn(settingOut, plan.layer, wall);
  plan.closers = closerPlan(job, settingOut, wall);
  for (const VentPlan& vent : plan.outer.vents)
    for (const VentPlan& through : plan.inner.vents)
      if (through.airBrick == vent.airBrick) plan.sleeves.push_back(vent.rect);
  plan.barriers = barrierPlan(job, settingOut, plan.layer, wall, plan.levelTop);
  planTrays(job, settingOut, plan);
  planTies(job, settingOut, plan);
  return plan;
}

}  // namespace model
