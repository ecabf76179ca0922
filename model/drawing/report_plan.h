// A plan with a mark at each place that was read. Private to this folder.
#pragma once

#include <optional>

#include "model/drawing/marked_plan.h"
#include "model/drawing/paragraph.h"
#include "model/drawing/report_tables.h"

namespace model {

using ReportPlan = PlanFit;

// The largest round scale at which the building with its marks is no wider than `room` and no
// higher; nothing when no reading of the set counts.
std::optional<ReportPlan> reportPlanOf(const ReportData& data, size_t set, const Vec2& room);

// Draws it into a place of that height. Marks: a dot within, a diamond at the edge, a triangle
// pointing up or down out; where several were read, the one most off. Beside it the readings'
// numbers. Returns how many marks have no room for them.
size_t drawReportPlan(Sheet& sheet, const Area& area, const ReportPlan& plan,
                      const ReportData& data, size_t set, const TextWidth& widthOf);

}  // namespace model
