// A plan of the building among the words of a report, with marks and numbers on it. Private to this
// folder.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/asbuilt/deviation.h"
#include "model/drawing/plan_parts.h"

namespace model {

struct PlanFit {
  int scale = 0;  // 1:scale
  double height = 0;
};

// The largest round scale at which the building with room for marks round it is no wider and no
// higher than `room`; nothing when none is.
std::optional<PlanFit> fitPlan(const Job& job, const SettingOut& out, const Vec2& room);

// What a plan is drawn from; all of it must outlive the plan.
struct PlanOf {
  const Job& job;
  const SettingOut& out;
  const std::vector<LineEnds>& profiles;
  const TextWidth& widthOf;
};
// In the middle of an area of that height. The sheet's view is the plan's until its last mark is
// there: a page has several plans, or none.
PlanPaper beginPlan(Sheet& sheet, const Area& area, const PlanFit& fit, const PlanOf& of);

// A dot within, a diamond at the edge, a triangle pointing up or down out.
void drawReadingMark(PlanPaper& plan, const Vec2& at, const Deviation& worst);

// Beside, above and below a mark, then further off; false when there is no room.
bool placePlanLabel(PlanPaper& plan, const Vec2& at, const std::string& words, bool bold = false);

}  // namespace model
