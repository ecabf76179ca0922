// The report to the designer: what was read, what is off, what it changes, and what is asked.
#pragma once

#include <string>

#include "model/asbuilt/as_built.h"
#include "model/drawing/paper.h"
#include "model/drawing/sheet.h"

namespace model {

struct DesignerReportOptions {
  Paper paper = Paper::A4;  // A4 upright, or A3 lying with two columns
  std::string date;         // in the title block as it is; empty: room to write it
};

// Its pages: in short; what it changes; questions with room for answers; every reading, set by set,
// with a plan; rafters; photographs. Also of a job without readings. The job must be free of
// errors, `built` deriveAsBuilt() of it.
Drawing drawDesignerReport(const Job& job, const SettingOut& out, const AsBuilt& built,
                           const DesignerReportOptions& options, const TextWidth& widthOf);

}  // namespace model
