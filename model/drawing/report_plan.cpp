#include "model/drawing/report_plan.h"

#include <algorithm>
#include <cmath>

#include <glm/common.hpp>
#include <glm/geometric.hpp>

#include "model/asbuilt/reading_summary.h"
#include "model/drawing/plan_parts.h"
#include "model/drawing/setting_out_plan.h"

namespace model {

namespace {

constexpr double kMargin = 17;   // round the building, for letters and numbers, mm
constexpr double kTogether = 2;  // marks nearer than this are one, mm
constexpr size_t kNumbers = 3;   // beside one mark
constexpr int kCrossed = 2;      // lines that a number may lie on

// All that was read at one place of the plan, the one most off first.
struct PlanMark {
  Vec2 at{0, 0};  // metres
  std::vector<const Deviation*> read;
};

// As mostOff() orders them, with those within behind.
bool worse(const Deviation* a, const Deviation* b) {
  if (a->verdict != b->verdict) return a->verdict > b->verdict;
  return std::abs(a->off) > std::abs(b->off);
}

std::vector<PlanMark> marksOf(const ReportData& data, size_t set, double scale) {
  const double together = kTogether * scale / 1000;
  std::vector<PlanMark> marks;
  for (const Deviation& d : data.built.deviations) {
    if (d.set != set || !d.latest) continue;
    auto near = std::find_if(marks.begin(), marks.end(), [&](const PlanMark& mark) {
      return glm::length(mark.at - d.place.at) < together;
    });
    if (near == marks.end()) near = marks.insert(marks.end(), PlanMark{d.place.at, {}});
    near->read.push_back(&d);
  }
  for (PlanMark& mark : marks) std::stable_sort(mark.read.begin(), mark.read.end(), worse);
  return marks;
}

// Of the first `most` readings.
std::string labelOf(const ReportData& data, const PlanMark& mark, size_t most) {
  std::string text;
  for (size_t i = 0; i < std::min(most, mark.read.size()); ++i) {
    const Deviation& d = *mark.read[i];
    text += (i == 0 ? "" : ", ") + std::to_string(readingNumber(data.job, d.set, d.row));
    if (d.verdict != Verdict::Within) text += ": " + offText(d.kind, d.off);
  }
  return mark.read.size() > most ? text + " \u2026" : text;
}

void drawMark(PlanPaper& plan, const Vec2& at, const Deviation& worst) {
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

// Beside, above and below the mark, then further off.
bool placeLabel(PlanPaper& plan, const Vec2& at, const std::string& words) {
  Text text = nameAt(plan, Layer::Levels, words, at);
  text.size = 1.8;
  const double half = plan.widthOf(words, text.size, false) / 2;
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

struct Reach {
  Vec2 low{1e300, 1e300}, high{-1e300, -1e300};
};

// Of the walls; points read far off the building do not make the plan smaller.
Reach wallsReach(const ReportData& data) {
  const PlanReach reach = reachOf(data.job, data.out, {});
  return {reach.wallsLow, reach.wallsHigh};
}

}  // namespace

std::optional<ReportPlan> reportPlanOf(const ReportData& data, size_t set, const Vec2& room) {
  if (marksOf(data, set, 100).empty()) return std::nullopt;
  const Reach reach = wallsReach(data);
  const Vec2 size = reach.high - reach.low;
  ReportPlan plan;
  for (const int scale :
       {20, 25, 50, 75, 100, 125, 150, 200, 250, 300, 400, 500, 750, 1000, 2000}) {
    plan.scale = scale;
    plan.height = size.y * 1000 / scale + 2 * kMargin;
    if (plan.height <= room.y && size.x * 1000 / scale + 2 * kMargin <= room.x) return plan;
  }
  return std::nullopt;
}

size_t drawReportPlan(Sheet& sheet, const Area& area, const ReportPlan& figure,
                      const ReportData& data, size_t set, const TextWidth& widthOf) {
  const Reach reach = wallsReach(data);
  const Vec2 middle = (area.low + area.high) / 2.0;
  const double mm = 1000.0 / figure.scale;
  sheet.view = View{double(figure.scale), middle - (reach.low + reach.high) / 2.0 * mm};
  const std::vector<LineEnds> none;
  PlanPaper plan{data.job, data.out, none, widthOf, sheet, area, ClearSpace(area)};
  drawPlanBuilding(plan);
  const std::vector<PlanMark> marks = marksOf(data, set, figure.scale);
  const auto inArea = [&](const Vec2& p) {
    return p.x > area.low.x + 2 && p.x < area.high.x - 2 && p.y > area.low.y + 2 &&
           p.y < area.high.y - 2;
  };
  for (const PlanMark& mark : marks) {
    const Vec2 at = plan.at(mark.at);
    if (!inArea(at)) continue;
    drawMark(plan, at, *mark.read.front());
    plan.space.take(Area{at - Vec2{1.6, 1.6}, at + Vec2{1.6, 1.6}}.corners());
  }
  drawCornerLetters(plan);
  size_t left = 0;
  // Those that are out find room first.
  std::vector<const PlanMark*> order;
  for (const PlanMark& mark : marks) order.push_back(&mark);
  std::stable_sort(order.begin(), order.end(), [](const PlanMark* a, const PlanMark* b) {
    return a->read.front()->verdict > b->read.front()->verdict;
  });
  for (const PlanMark* mark : order) {
    const Vec2 at = plan.at(mark->at);
    const bool named = inArea(at) && (placeLabel(plan, at, labelOf(data, *mark, kNumbers)) ||
                                      placeLabel(plan, at, labelOf(data, *mark, 1)));
    left += !named;
  }
  sheet.view.reset();  // a page has several plans, or none
  return left;
}

}  // namespace model
