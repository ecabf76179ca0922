// The schedules that stand beside the setting-out plan.
#pragma once

#include <vector>

#include "model/drawing/sheet_table.h"
#include "model/lines/set_out_lines.h"
#include "model/settingout/setting_out.h"

namespace model {

// What is wanted on site first: lines, diagonals, corners, offsets, levels, limits, then the marks
// on the boards and the tapes that fix each corner. Those without rows are left out.
std::vector<SheetTable> settingOutSchedules(const Job& job, const SettingOut& out,
                                            const SetOutLines& lines);

}  // namespace model
