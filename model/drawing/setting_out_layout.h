// How the setting-out sheet is shared out, and the scale of its plan. Private to this folder.
#pragma once

#include <optional>

#include "model/drawing/setting_out_plan.h"
#include "model/drawing/setting_out_sheet.h"

namespace model {

inline constexpr double kSheetGap = 4;  // between the parts of a sheet, mm

// How a sheet is shared out between plan, schedules and title block.
struct SheetLayout {
  Lie lie = Lie::Landscape;
  bool beside = true;  // schedules beside the plan; else on sheets of their own
  Sheet sheet;
  double column = 0;  // width of schedules and title block
  Area plan, notes;
};

// Size on paper of what a plan shows, mm.
struct PlanExtent {
  Vec2 low{0, 0}, high{0, 0};  // from the model's (0, 0), mm
  Vec2 size() const { return high - low; }
};

PlanExtent extentAt(const PlanReach& reach, int scale, bool site);

struct SheetChoice {
  SheetLayout layout;
  int scale = 0;
  bool siteIsCut = false;
};

// The layout with the largest scale, or the scale that is asked for; nothing when it does not fit.
std::optional<SheetChoice> chooseSheet(const PlanReach& reach,
                                       const SettingOutSheetOptions& options);

// Why nothing was chosen, and what would be right.
Problem doesNotFit(const PlanReach& reach, const SettingOutSheetOptions& options);

}  // namespace model
