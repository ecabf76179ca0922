// The plan of the setting-out sheet: site, lines, boards, letters and dimensions at a scale.
#pragma once

#include <vector>

#include "model/drawing/clear_space.h"
#include "model/drawing/sheet.h"
#include "model/lines/limits.h"
#include "model/lines/tape.h"
#include "model/settingout/setting_out.h"
#include "model/works/profile_places.h"

namespace model {

// What one plan is drawn from and onto.
struct PlanPaper {
  const Job& job;
  const SettingOut& out;
  const std::vector<LineEnds>& profiles;
  const TextWidth& widthOf;
  Sheet& sheet;  // its view is set
  Area area;     // of the plan; nothing of it is drawn outside
  ClearSpace space;
  double letters = 2.5;

  Vec2 at(const Vec2& metres) const { return sheet.view->onPaper(metres); }
  Polygon at(const Polygon& metres) const;
  // Strokes in metres, cut off at the area's edge; texts keep off those that are solid.
  void line(Layer layer, const Pen& pen, const Vec2& a, const Vec2& b);
  void outline(Layer layer, const Pen& pen, const Polygon& polygon);
  void fill(Layer layer, double grey, const Polygon& polygon);
};

// Low and high corner in metres: the walls with their concrete, what is set out (with boards and
// cellar), and all that the sheet shows when it can: the boundary that the job gives, buildings on
// the site, the bench mark.
struct PlanReach {
  Vec2 wallsLow{1e300, 1e300}, wallsHigh{-1e300, -1e300};
  Vec2 workLow{1e300, 1e300}, workHigh{-1e300, -1e300};
  Vec2 siteLow{1e300, 1e300}, siteHigh{-1e300, -1e300};
};
PlanReach reachOf(const Job& job, const SettingOut& out, const std::vector<LineEnds>& profiles);

// In this order: ground first, so that the rest lies over it; words last, so that they find room.
void drawPlanSite(PlanPaper& plan);
void drawPlanBuilding(PlanPaper& plan);
void drawPlanProfiles(PlanPaper& plan);
void drawCornerLetters(PlanPaper& plan);
void drawWallDimensions(PlanPaper& plan);
// To what is nearest, and to what a limit is measured from.
void drawOffsets(PlanPaper& plan, const std::vector<LimitTest>& limits);
// Those of distances that the job gives: the line to keep behind, a mark and words that say whether
// it is kept. Heights stand in the schedule.
void drawPlanLimits(PlanPaper& plan, const std::vector<LimitTest>& limits);
// Only when they are few: many would cover the plan, which then says that they are in the schedule.
void drawDiagonals(PlanPaper& plan, const std::vector<Tape>& diagonals);
void drawPlanNames(PlanPaper& plan);

}  // namespace model
