// Where cavity trays lie: over every opening with a lintel in the outer leaf, and over level
// barriers.
#include <algorithm>
#include <cmath>

#include "model/works/cavity_plan.h"
#include "model/works/stretches.h"

namespace model {

namespace {

// How far a tray rises across the cavity: common practice, no source.
constexpr double kRise = 0.140, kLeastRise = 0.040;
constexpr double kClear = 0.020;     // under the rafters, as holes in a gable are kept
constexpr double kShortest = 0.050;  // of a stretch: common practice, no source

// The lowest bed of the inner leaf that is high enough, or else as high as may be.
double upperEdge(const std::vector<BlockBed>& beds, double low, double limit) {
  for (const BlockBed& bed : beds)
    if (bed.level > low + kRise - 1e-6) return std::min(bed.level, limit);
  return std::min(low + kRise, limit);
}

// How high a tray between two places may rise from its lower edge: clear of all that is there.
double limitOver(const TrayPlan& tray, const CavityPlan& plan) {
  double limit = plan.topBetween(tray.from, tray.to) - kClear;
  const auto keepUnder = [&](const Rect& other) {
    if (other.s0 < tray.to && other.s1 > tray.from && other.z1 > tray.low)
      limit = std::min(limit, other.z0 - kTrayThickness);
  };
  for (const Rect& opening : plan.openings) keepUnder(opening);
  for (const CloserPlan& closer : plan.closers) keepUnder(closer.rect);
  for (const Rect& sleeve : plan.sleeves) keepUnder(sleeve);
  for (const BarrierPlan& barrier : plan.barriers)
    if (!barrier.upright) keepUnder(barrier.rect);
  for (const TrayPlan& before : plan.trays) keepUnder(before.rect());
  return limit;
}

// Its lower edge lies in the first bed of the outer leaf that is not under the barrier's top.
void overBarrier(const Job& job, const SettingOut& settingOut, const std::vector<BlockBed>& beds,
                 size_t barrier, CavityPlan& plan) {
  constexpr double kHair = 1e-4;
  const double course = job.walls.course(), datum = settingOut.levels.dampCourse;
  TrayPlan tray;
  tray.over = TrayPlan::Over::Barrier;
  tray.barrier = barrier;
  tray.low = datum + course * std::ceil((plan.barriers[barrier].rect.z1 - datum - kHair) / course);
  double limit = plan.slope.empty() ? plan.levelTop - kClear : 1e9;
  // A course of the outer leaf stands on it.
  if (plan.slope.empty() && tray.low + course > plan.outer.levelTop + kHair) return;
  for (const BarrierPlan& other : plan.barriers)
    if (!other.upright && other.rect.z1 > tray.low + kHair)
      limit = std::min(limit, other.rect.z0 - kTrayThickness);
  tray.high = upperEdge(beds, tray.low, limit);
  if (tray.high < tray.low + kLeastRise) return;
  std::vector<Stretch> stretches{{plan.layer.from + kClear, plan.layer.to - kClear}};
  const Rect band{-1e9, tray.low, 1e9, tray.rect().z1};
  const auto keepOff = [&](const Rect& r) {
    if (r.overlaps(band)) leaveOut(r.s0, r.s1, stretches);
  };
  for (const Rect& opening : plan.openings) keepOff(opening);
  for (const CloserPlan& closer : plan.closers) keepOff(closer.rect);
  for (const Rect& sleeve : plan.sleeves) keepOff(sleeve);
  for (const TrayPlan& before : plan.trays) keepOff(before.rect());
  for (const CavityPlan::LowSlope& under : plan.underSlope(band.z1 + kClear))
    leaveOut(under.from, under.to, stretches);
  std::erase_if(stretches, [](const Stretch& s) { return s.to - s.from < kShortest; });
  for (const Stretch& stretch : stretches) {
    tray.from = stretch.from;
    tray.to = stretch.to;
    plan.trays.push_back(tray);
    ++tray.piece;
  }
}

bool reaches(const CavityPlan& plan, const TrayPlan& tray, bool start) {
  constexpr double kHair = 1e-6;
  return start ? tray.from < plan.layer.from + kClear + kHair
               : tray.to > plan.layer.to - kClear - kHair;
}

}  // namespace

void planTrays(const Job& job, const SettingOut& settingOut, CavityPlan& plan) {
  if (plan.outer.lintels.empty()) return;
  const std::vector<BlockBed> beds = blockBeds(job, settingOut, plan.inner);
  for (size_t i = 0; i < plan.outer.lintels.size(); ++i) {
    const LintelPlan& lintel = plan.outer.lintels[i];
    TrayPlan tray;
    tray.opening = lintel.opening;
    tray.lintel = i;
    tray.from = std::max(lintel.rect.s0, plan.layer.from + kClear);
    tray.to = std::min(lintel.rect.s1, plan.layer.to - kClear);
    tray.low = lintel.rect.z1;
    if (tray.to - tray.from < kClear) continue;
    tray.high = upperEdge(beds, tray.low, limitOver(tray, plan));
    // Right under the rafters there is no room, and the eaves keep the wall dry.
    if (tray.high > tray.low + kLeastRise) plan.trays.push_back(tray);
  }
}

void planStepTrays(const Job& job, const SettingOut& settingOut, CavityPlan& plan) {
  const std::vector<BlockBed> beds = blockBeds(job, settingOut, plan.inner);
  for (size_t i = 0; i < plan.outer.dampSteps.size(); ++i) {
    const DampStepPlan& step = plan.outer.dampSteps[i];
    TrayPlan tray;
    tray.over = TrayPlan::Over::Step;
    tray.step = i;
    tray.from = step.from;
    tray.to = step.to;
    tray.low = step.level;
    tray.high = upperEdge(beds, tray.low, limitOver(tray, plan));
    if (tray.high > tray.low + kLeastRise) plan.trays.push_back(tray);
  }
}

void planBarrierTrays(const Job& job, const SettingOut& settingOut, CavityPlan& plan) {
  const std::vector<BlockBed> beds = blockBeds(job, settingOut, plan.inner);
  for (size_t i = 0; i < plan.barriers.size(); ++i)
    if (!plan.barriers[i].upright) overBarrier(job, settingOut, beds, i, plan);
}

void meetRoundCorner(const CavityPlan& other, bool atStart, CavityPlan& plan) {
  constexpr double kSame = 1e-6;
  for (TrayPlan& tray : plan.trays) {
    if (tray.over != TrayPlan::Over::Barrier || !reaches(plan, tray, atStart)) continue;
    const bool goesOn =
        std::any_of(other.trays.begin(), other.trays.end(), [&](const TrayPlan& beyond) {
          return beyond.over == TrayPlan::Over::Barrier && reaches(other, beyond, !atStart) &&
                 std::fabs(beyond.low - tray.low) < kSame &&
                 std::fabs(beyond.high - tray.high) < kSame;
        });
    if (!goesOn) continue;
    (atStart ? tray.from : tray.to) = atStart ? plan.layer.from : plan.layer.to;
    (atStart ? tray.stopFrom : tray.stopTo) = false;
  }
}

}  // namespace model
