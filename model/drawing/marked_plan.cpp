#include "model/drawing/marked_plan.h"

#include <algorithm>
#include <cmath>

#include <glm/common.hpp>

namespace model {

namespace {

constexpr double kMargin = 17;  // round the building, for letters and numbers, mm
constexpr int kCrossed = 2;     // lines that a number may lie on

struct Reach {
  Vec2 low{1e300, 1e300}, high{-1e300, -1e300};
};

// Of the walls; points read far off the building do not make the plan smaller.
Reach wallsReach(const Job& job, const SettingOut& out) {
  const PlanReach reach = reachOf(job, out, {});
  return {reach.wallsLow, reach.wallsHigh};
}

}  // namespace

std::optional<PlanFit> fitPlan(const Job& job, const SettingOut& out, const Vec2& room) {
  const Reach reach = wallsReach(job, out);
  const Vec2 size = reach.high - reach.low;
  PlanFit plan;
  for (const int scale :
       {20, 25, 50, 75, 100, 125, 150, 200, 250, 300, 400, 500, 750, 1000, 2000}) {
    plan.scale = scale;
    plan.height = size.y * 1000 / scale + 2 * kMargin;
    if (plan.height <= room.y && size.x * 1000 / scale + 2 * kMargin <= room.x) return plan;
  }
  return std::nullopt;
}

PlanPaper beginPlan(Sheet& sheet, const Area& area, const PlanFit& fit, const PlanOf& of) {
  const Reach reach = wallsReach(of.job, of.out);
  const Vec2 middle = (area.low + area.high) / 2.0;
  const double mm = 1000.0 / fit.scale;
  sheet.view = View{double(fit.scale), middle - (reach.low + reach.high) / 2.0 * mm};
  return {of.job, of.out, of.profiles, of.widthOf, sheet, area, ClearSpace(area)};
}

void drawReadingMark(PlanPaper& plan, const Vec2& at, const Deviation& worst) {
  const auto figure = [&](const Polygon& points) {
    plan.sheet.fills.push_back({Layer::Levels, 0, points});
  };
  if (worst.verdict == Verdict::Within) {
    Polygon dot;
    for (int i = 0; i < 16; ++i) {
      const double angle = i * 3.14159265358979323846 / 8;
      dot.push_back(at + Vec2{std::cos(angle), std::sin(angle)} * 0.8);
    }
    figure(dot);
  } else if (worst.verdict == Verdict::AtTheEdge) {
    figure({at + Vec2{1.3, 0}, at + Vec2{0, 1.3}, at - Vec2{1.3, 0}, at - Vec2{0, 1.3}});
  } else {
    const double up = worst.off > 0 ? 1 : -1;
    Polygon triangle{at + Vec2{-1.5, -1.2 * up}, at + Vec2{1.5, -1.2 * up}, at + Vec2{0, 1.5 * up}};
    if (up < 0) std::reverse(triangle.begin(), triangle.end());
    figure(triangle);
  }
}

bool placePlanLabel(PlanPaper& plan, const Vec2& at, const std::string& words, bool bold) {
  Text text = nameAt(plan, Layer::Levels, words, at);
  text.size = 1.8;
  text.bold = bold;
  const double half = plan.widthOf(words, text.size, bold) / 2;
  std::vector<Text> places;
  for (const double away : {2.2, 3.6, 5.4})
    for (const Vec2 side : {Vec2{1, 0}, Vec2{-1, 0}, Vec2{0, 1}, Vec2{0, -1}, Vec2{1, 1},
                            Vec2{-1, 1}, Vec2{1, -1}, Vec2{-1, -1}}) {
      places.push_back(text);
      places.back().at = at + Vec2{side.x * (half + away), side.y * (away + 0.6)};
      if (side.x == 0) continue;
      if (side.y != 0) places.back().at.x -= side.x * away / 2;
    }
  const auto found = plan.space.place(places, plan.widthOf, kCrossed);
  if (found) plan.sheet.texts.push_back(*found);
  return found.has_value();
}

}  // namespace model
