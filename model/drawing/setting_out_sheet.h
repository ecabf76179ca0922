// The setting-out drawing: a plan to scale with its schedules, on as many sheets as it needs.
#pragma once

#include <optional>
#include <string>

#include "model/drawing/paper.h"
#include "model/drawing/sheet.h"
#include "model/problems.h"
#include "model/settingout/setting_out.h"

namespace model {

struct SettingOutSheetOptions {
  Paper paper = Paper::A3;
  std::optional<int> scale;  // 1:scale; none: the largest standard one at which the site fits
  std::string date;          // in the title block as it is; empty: room to write it
};

struct SettingOutDrawing {
  std::optional<Drawing> drawing;  // the plan is on its first sheet
  std::optional<Problem> problem;  // why there is none; without a file
  int scale = 0;
  // At the scale asked for the building and its boards fit but not the whole site.
  bool siteIsCut = false;
};

// The job must be free of errors (validateJob).
SettingOutDrawing drawSettingOut(const Job& job, const SettingOut& out,
                                 const SettingOutSheetOptions& options, const TextWidth& widthOf);

}  // namespace model
