// The hole for the cellar: flat bottom with working space, sides upright or battered, benches.
#pragma once

#include <vector>

#include "model/works/ground_zones.h"

namespace model {

struct CellarDig {
  double margin = 0;  // of the flat bottom outside the cellar's walls
  double reach = 0;   // of the batter's top beyond the bottom, where the ground is highest
  Regions bottom;
  std::vector<BatterSide> sides;  // empty when upright
  std::vector<double> benches;    // bottoms of the benches, first to last; the last = formation
};

// Only for a job with a cellar.
CellarDig deriveCellarDig(const Job& job, const SettingOut& settingOut);

// Sides as steep as this or steeper are dug upright, and held up.
inline constexpr double kUprightBatter = 85;  // degrees

}  // namespace model
