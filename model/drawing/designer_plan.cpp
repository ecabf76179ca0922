#include "model/drawing/designer_plan.h"

#include <algorithm>

#include <glm/geometric.hpp>

#include "model/asbuilt/reading_summary.h"
#include "model/drawing/marked_plan.h"

namespace model {

namespace {

constexpr double kPlan = 150, kLeastPlan = 70, kBelow = 10;  // heights, mm
constexpr double kTogether = 3;                              // marks nearer than this are one, mm
constexpr size_t kNames = 4;                                 // beside one mark

// What is told at one place of the plan.
struct PlaceMark {
  Vec2 at{0, 0};  // paper
  std::vector<std::string> names;
  bool strong = false;  // a question or a reading is among them
};

void add(std::vector<PlaceMark>& marks, const Vec2& at, const std::string& name, bool strong) {
  auto near = std::find_if(marks.begin(), marks.end(), [&](const PlaceMark& mark) {
    return glm::length(mark.at - at) < kTogether;
  });
  if (near == marks.end()) near = marks.insert(marks.end(), PlaceMark{at, {}, false});
  near->names.push_back(name);
  near->strong = near->strong || strong;
}

std::string labelOf(const PlaceMark& mark, size_t most) {
  std::string text;
  for (size_t i = 0; i < std::min(most, mark.names.size()); ++i)
    text += (i == 0 ? "" : ", ") + mark.names[i];
  return mark.names.size() > most ? text + " \u2026" : text;
}

// A dark bar across the wall, its middle as the mark.
void drawOpenings(PlanPaper& plan, const DesignerSheetData& data, std::vector<PlaceMark>& marks) {
  const double thick = data.model.job.walls.total();
  for (size_t i = 0; i < data.facts.openings.size(); ++i) {
    const BuiltOpening& built = plan.out.openings[data.facts.openings[i].opening];
    const WallLine& wall = plan.out.walls[built.wall];
    const Polygon bar{wall.at(built.s0), wall.at(built.s1), wall.at(built.s1, thick),
                      wall.at(built.s0, thick)};
    plan.fill(Layer::Outlines, 0.35, bar);
    plan.space.take(plan.at(bar));
    add(marks, plan.at(wall.at((built.s0 + built.s1) / 2, thick / 2)), "O" + std::to_string(i + 1),
        false);
  }
}

size_t drawMarks(PlanPaper& plan, const DesignerSheetData& data) {
  std::vector<PlaceMark> marks;
  drawOpenings(plan, data, marks);
  const auto inside = [&](const Vec2& p) {
    return p.x > plan.area.low.x + 2 && p.x < plan.area.high.x - 2 && p.y > plan.area.low.y + 2 &&
           p.y < plan.area.high.y - 2;
  };
  for (const OffReading& off : data.facts.off) {
    const Deviation& d = data.built.deviations[off.deviation];
    const Vec2 at = plan.at(d.place.at);
    if (inside(at)) {
      drawReadingMark(plan, at, d);
      plan.space.take(Area{at - Vec2{1.6, 1.6}, at + Vec2{1.6, 1.6}}.corners());
    }
    add(marks, at, "R" + std::to_string(readingNumber(plan.job, d.set, d.row)), true);
  }
  for (const SheetQuestion& question : data.facts.questions)
    if (question.at) add(marks, plan.at(*question.at), "Q" + std::to_string(question.number), true);
  drawCornerLetters(plan);
  // What asks for something finds room first.
  std::stable_sort(marks.begin(), marks.end(),
                   [](const PlaceMark& a, const PlaceMark& b) { return a.strong && !b.strong; });
  size_t left = 0;
  for (const PlaceMark& mark : marks) {
    const bool named =
        inside(mark.at) && (placePlanLabel(plan, mark.at, labelOf(mark, kNames), mark.strong) ||
                            placePlanLabel(plan, mark.at, labelOf(mark, 1), mark.strong));
    left += !named;
  }
  return left;
}

}  // namespace

void drawDesignerPlan(ReportFlow& flow, const DesignerSheetData& data, const TextWidth& widthOf) {
  const Job& job = data.model.job;
  const SettingOut& out = data.model.settingOut;
  const double left = flow.left() - kBelow;
  const auto fit =
      fitPlan(job, out, {flow.width(), left < kLeastPlan ? kPlan : std::min(kPlan, left)});
  if (!fit) return;
  const TablePlace place = flow.room(fit->height);
  const std::vector<LineEnds> none;
  Sheet& sheet = flow.drawing().sheets[place.sheet];
  PlanPaper plan = beginPlan(sheet, place.area, *fit, {job, out, none, widthOf});
  drawPlanBuilding(plan);
  const size_t unnamed = drawMarks(plan, data);
  sheet.view.reset();
  std::string words = "On plan, 1:" + std::to_string(fit->scale) +
                      ", all storeys over one another: O openings, Q questions about a place";
  words += data.facts.off.empty() ? "." : ", R readings that are out.";
  if (unnamed == 1) words += " One place had no room for its numbers.";
  if (unnamed > 1)
    words += " " + std::to_string(unnamed) + " places had no room for their numbers.";
  flow.paragraph(words, {1.8, false});
  flow.gap(2);
}

}  // namespace model
