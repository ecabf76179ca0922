// Where the ground floor's slab is poured, and when.
#pragma once

#include "model/job/job.h"
#include "model/settingout/setting_out.h"
#include "model/works/element.h"

namespace model {

// Inside the walls, without what lies over the cellar.
Regions groundSlabArea(const SettingOut& settingOut);

// Concrete of the foundations that stands higher than a level.
struct HighConcrete {
  Regions area;
  double top = 0;
};
std::vector<HighConcrete> concreteAbove(const SettingOut& settingOut, double level);

// The share of its stage in which a slab's bed of hardcore or blinding is laid, and that of the
// slab's own stage before the pour: pins are set in what is left.
inline constexpr double kBedLaid = 0.9;
inline constexpr double kBeforePour = 0.1;

// How the ground floor comes over the plan, from west to east.
Placement groundFloorLaid(const Job& job, const SettingOut& settingOut);

}  // namespace model
