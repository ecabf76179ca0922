#include "model/works/cavity_plan.h"

#include <algorithm>

#include "model/bond/course_bands.h"
#include "model/walls/parapet_line.h"

namespace model {

Rect TrayPlan::rect() const { return {from, low, to, high + kTrayThickness}; }

Rect TrayPlan::pastCorners() const {
  constexpr double kPast = 1;  // metres
  Rect r = rect();
  if (!stopFrom) r.s0 -= kPast;
  if (!stopTo) r.s1 += kPast;
  return r;
}

double TrayPlan::sheetAt(const WallLayer& cavity, double d) const {
  return low + (high - low) * (d - cavity.outer) / cavity.thickness();
}

Rect TiePlan::rect() const {
  return {s - kTieWidth / 2, std::min(outer, inner) - kTieThickness / 2, s + kTieWidth / 2,
          std::max(outer, inner) + kTieThickness / 2};
}

double CavityPlan::topBetween(double s0, double s1) const {
  return slope.empty() ? levelTop : lowestBetween(slope, s0, s1);
}

std::vector<CavityPlan::LowSlope> CavityPlan::underSlope(double level) const {
  std::vector<LowSlope> under;
  for (size_t i = 0; i + 1 < slope.size(); ++i) {
    const double s0 = (slope[i].front.x + slope[i].back.x) / 2,
                 s1 = (slope[i + 1].front.x + slope[i + 1].back.x) / 2;
    const double z0 = std::min(slope[i].front.y, slope[i].back.y),
                 z1 = std::min(slope[i + 1].front.y, slope[i + 1].back.y);
    if (z0 >= level && z1 >= level) continue;
    const double at = z0 == z1 ? s1 : s0 + (s1 - s0) * (level - z0) / (z1 - z0);
    const double from = z0 < level ? s0 : at, to = z1 < level ? s1 : at;
    // From the end of the wall on, whatever the mitre.
    under.push_back({i == 0 ? from - 1 : from, i + 2 == slope.size() ? to + 1 : to, z0 < level});
  }
  return under;
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

namespace {

// All but the ties, and with every tray ending in its own wall.
CavityPlan planWithTrays(const Job& job, const SettingOut& settingOut, size_t wall) {
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
  planStepTrays(job, settingOut, plan);
  planBarrierTrays(job, settingOut, plan);
  return plan;
}

}  // namespace

CavityPlan cavityPlan(const Job& job, const SettingOut& settingOut, size_t wall) {
  CavityPlan plan = planWithTrays(job, settingOut, wall);
  if (plan.empty()) return plan;
  const auto hasLevel = [&](size_t of) {
    return std::any_of(job.cavityBarriers.begin(), job.cavityBarriers.end(), [&](const auto& b) {
      return b.level && settingOut.wallNamed(b.wall) == of;
    });
  };
  const size_t n = settingOut.walls.size();
  for (const bool atStart : {true, false}) {
    const size_t beside = (wall + (atStart ? n - 1 : 1)) % n;
    if (hasLevel(wall) && hasLevel(beside))
      meetRoundCorner(planWithTrays(job, settingOut, beside), atStart, plan);
  }
  planTies(job, settingOut, plan);
  return plan;
}

}  // namespace model
