// Gauge rods at full size, as strips to cut out, paste together and fix to a straight batten.
#pragma once

#include <vector>

#include "model/drawing/paper.h"
#include "model/drawing/sheet.h"
#include "model/settingout/gauge_rod.h"

namespace model {

// Of the measuring edge, from the strip's left: lengths of its lines, mm. A block course that comes
// level has a longer line than other courses.
inline constexpr double kCourseLine = 8, kBlockLine = 14;

// Sheets upright, several strips on each; every corner starts on a sheet of its own. The strips of
// a corner are numbered from its foot. One millimetre is one on the rod.
Drawing drawRodStrips(const Job& job, const SettingOut& out, const std::vector<GaugeRod>& rods,
                      Paper paper, const TextWidth& widthOf);

}  // namespace model
