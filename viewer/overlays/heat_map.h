// How far a surface that was read is off its level, cell by cell: for the overlay of readings. No
// drawing.
#pragma once

#include <optional>
#include <vector>

#include "model/asbuilt/as_built.h"
#include "model/settingout/setting_out.h"

namespace viewer {

enum class HeatBand { LowOut, LowEdge, Within, HighEdge, HighOut };
inline constexpr int kHeatBands = 5;
// "low, out", "low, at the edge", "within", ...
const char* nameOf(HeatBand band);
HeatBand bandOf(double off, const model::Allowed& allowed);

struct HeatCell {
  model::Vec2 middle{0, 0};
  double half = 0;   // of its side, metres
  double level = 0;  // as built
  double made = 0;   // when what was read is there, programme's clock
  HeatBand band = HeatBand::Within;
};

// Of concrete, slabs, floors and dug surfaces with three readings and more; of strips only where
// there is concrete, of slabs not across a notch in the plan. Of the latest readings, or of one set
// of Job::readings. `levelTimes` as timesOfLevels() gives them.
std::vector<HeatCell> heatCells(const model::Job& job, const model::SettingOut& settingOut,
                                const std::vector<double>& levelTimes,
                                const model::AsBuilt& asBuilt, std::optional<size_t> set);

}  // namespace viewer
