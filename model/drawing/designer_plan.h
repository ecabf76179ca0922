// The plan of the designer's sheet, with the numbers of openings, questions and readings. Private
// to this folder.
#pragma once

#include "model/drawing/designer_tables.h"
#include "model/drawing/report_pages.h"

namespace model {

// With a line of words beneath it; nothing when no scale is small enough for the page.
void drawDesignerPlan(ReportFlow& flow, const DesignerSheetData& data, const TextWidth& widthOf);

}  // namespace model
