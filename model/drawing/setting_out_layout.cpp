#include "model/drawing/setting_out_layout.h"

#include <algorithm>
#include <cmath>

#include <glm/common.hpp>

#include "model/drawing/title_block.h"

namespace model {

namespace {

constexpr double kGap = 4;          // between the parts of a sheet, mm
constexpr double kNotes = 11;       // height of notes and scale bar under the plan
constexpr double kDimensions = 24;  // room round the work for its dimension lines
constexpr double kRim = 4;          // round the site

SheetLayout layoutOf(Paper paper, Lie lie, bool beside) {
  SheetLayout layout;
  layout.lie = lie;
  layout.beside = beside;
  layout.sheet = blankSheet(paper, lie);
  const Area border = insideBorder(layout.sheet);
  layout.column = paper == Paper::A3 ? 116 : 92;
  const double right = border.high.x - (beside ? layout.column + kGap : kGap);
  const double foot = border.low.y + (beside ? kNotes + kGap : kTitleBlockHeight + kGap);
  layout.plan = {{border.low.x + kGap, foot}, {right, border.high.y - kGap}};
  const double notesRight = beside ? right - 2 : border.high.x - layout.column - kGap;
  layout.notes = {{border.low.x + kGap, border.low.y + 2}, {notesRight, foot - 2}};
  return layout;
}

std::vector<SheetLayout> layoutsOf(Paper paper) {
  return {layoutOf(paper, Lie::Landscape, true), layoutOf(paper, Lie::Landscape, false),
          layoutOf(paper, Lie::Portrait, false)};
}

}  // namespace

PlanExtent extentAt(const PlanReach& reach, int scale, bool site) {
  const double mm = 1000.0 / scale;
  const Vec2 margin{kDimensions, kDimensions}, rim{kRim, kRim};
  PlanExtent needed{reach.wallsLow * mm - margin, reach.wallsHigh * mm + margin};
  const auto add = [&](const Vec2& low, const Vec2& high) {
    needed.low = glm::min(needed.low, low * mm - rim);
    needed.high = glm::max(needed.high, high * mm + rim);
  };
  add(reach.workLow, reach.workHigh);
  if (site) add(reach.siteLow, reach.siteHigh);
  return needed;
}

namespace {

bool fits(const PlanExtent& needed, const Area& area) {
  return needed.size().x <= area.width() && needed.size().y <= area.height();
}

}  // namespace

std::optional<SheetChoice> chooseSheet(const PlanReach& reach,
                                       const SettingOutSheetOptions& options) {
  const std::vector<SheetLayout> layouts = layoutsOf(options.paper);
  if (options.scale) {
    for (const bool site : {true, false})
      for (const SheetLayout& layout : layouts)
        if (fits(extentAt(reach, *options.scale, site), layout.plan))
          return SheetChoice{layout, *options.scale, !site};
    return std::nullopt;
  }
  std::optional<SheetChoice> best;
  for (const SheetLayout& layout : layouts) {
    const auto scale =
        largestScale([&](int each) { return fits(extentAt(reach, each, true), layout.plan); });
    if (scale && (!best || *scale < best->scale)) best = SheetChoice{layout, *scale, false};
  }
  return best;
}

Problem doesNotFit(const PlanReach& reach, const SettingOutSheetOptions& options) {
  Problem problem;
  const std::string paper = nameOf(options.paper);
  if (!options.scale) {
    problem.what = "the site is too large for " + paper + " at any standard scale";
    problem.instead = "look for a corner that is mistyped";
    return problem;
  }
  const Vec2 size = extentAt(reach, *options.scale, false).size();
  const SheetLayout layout = layoutOf(options.paper, Lie::Landscape, false);
  SettingOutSheetOptions any = options;
  any.scale.reset();
  const auto fitting = largestScale([&](int each) {
    any.scale = each;
    return chooseSheet(reach, any).has_value();
  });
  const auto mm = [](double length) { return std::to_string(int(std::ceil(length))); };
  problem.what = "at 1:" + std::to_string(*options.scale) +
                 " the building, its boards and dimensions take up " + mm(size.x) + " by " +
                 mm(size.y) + " mm; " + paper + " has room for " + mm(layout.plan.width()) +
                 " by " + mm(layout.plan.height()) + " mm";
  problem.instead = fitting ? "1:" + std::to_string(*fitting) + " fits" : "no standard scale fits";
  if (options.paper == Paper::A4) problem.instead += "; or ask for A3";
  return problem;
}

}  // namespace model
