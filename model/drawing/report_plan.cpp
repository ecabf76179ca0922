#include "model/drawing/report_plan.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/asbuilt/reading_summary.h"
#include "model/drawing/setting_out_plan.h"

namespace model {

namespace {

constexpr double kTogether = 2;  // marks nearer than this are one, mm
constexpr size_t kNumbers = 3;   // beside one mark

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

}  // namespace

std::optional<ReportPlan> reportPlanOf(const ReportData& data, size_t set, const Vec2& room) {
  if (marksOf(data, set, 100).empty()) return std::nullopt;
  return fitPlan(data.job, data.out, room);
}

size_t drawReportPlan(Sheet& sheet, const Area& area, const ReportPlan& figure,
                      const ReportData& data, size_t set, const TextWidth& widthOf) {
  const std::vector<LineEnds> none;
  PlanPaper plan = beginPlan(sheet, area, figure, {data.job, data.out, none, widthOf});
  drawPlanBuilding(plan);
  const std::vector<PlanMark> marks = marksOf(data, set, figure.scale);
  const auto inArea = [&](const Vec2& p) {
    return p.x > area.low.x + 2 && p.x < area.high.x - 2 && p.y > area.low.y + 2 &&
           p.y < area.high.y - 2;
  };
  for (const PlanMark& mark : marks) {
    const Vec2 at = plan.at(mark.at);
    if (!inArea(at)) continue;
    drawReadingMark(plan, at, *mark.read.front());
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
    const bool named = inArea(at) && (placePlanLabel(plan, at, labelOf(data, *mark, kNumbers)) ||
                                      placePlanLabel(plan, at, labelOf(data, *mark, 1)));
    left += !named;
  }
  sheet.view.reset();  // a page has several plans, or none
  return left;
}

}  // namespace model
