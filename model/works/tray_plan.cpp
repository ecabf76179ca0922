// Where cavity trays lie: over every opening with a lintel in the outer leaf.
#include <algorithm>

#include "model/works/cavity_plan.h"

namespace model {

namespace {

// How far a tray rises across the cavity: common practice, no source.
constexpr double kRise = 0.140, kLeastRise = 0.040;
constexpr double kClear = 0.020;  // under the rafters, as holes in a gable are kept

// The lowest bed of the inner leaf that is high enough, or else as high as may be.
double upperEdge(const std::vector<BlockBed>& beds, double low, double limit) {
  for (const BlockBed& bed : beds)
    if (bed.level > low + kRise - 1e-6) return std::min(bed.level, limit);
  return std::min(low + kRise, limit);
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
    tray.high = upperEdge(beds, tray.low, limit);
    // Right under the rafters there is no room, and the eaves keep the wall dry.
    if (tray.high > tray.low + kLeastRise) plan.trays.push_back(tray);
  }
}

}  // namespace model
