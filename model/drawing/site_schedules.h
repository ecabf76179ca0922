// Schedules of places and levels, for the setting-out sheet. Private to this folder.
#pragma once

#include <array>

#include "model/drawing/sheet_table.h"
#include "model/lines/set_out_lines.h"
#include "model/settingout/setting_out.h"

namespace model {

SheetTable cornersTable(const Job& job, const SettingOut& out);
// Only when there are several: one alone stands in the title block.
SheetTable benchMarksTable(const Job& job);
SheetTable offsetsTable(const Job& job, const SettingOut& out);
// Those that the job gives.
SheetTable limitsTable(const SetOutLines& lines);
// Those up to the ground floor, which are wanted first; then the rest.
std::array<SheetTable, 2> levelsTables(const Job& job, const SettingOut& out);

}  // namespace model
