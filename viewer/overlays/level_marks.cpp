// The scheduled levels beside the building, each with its mark, value, name and course.
#include <algorithm>

#include "model/level_text.h"
#include "viewer/overlays/overlay_sheet.h"
#include "viewer/overlays/words.h"

namespace viewer {
namespace {

constexpr float kTextAside = 34;   // units from the mark's foot to its text
constexpr float kLeastText = 300;  // units that a text should have at least

// The corner of the plan that stands furthest to the right on the sheet.
std::optional<glm::vec2> rightmostCorner(const OverlaySheet& sheet) {
  std::optional<glm::vec2> best;
  float bestX = -1e30f;
  for (const model::Corner& corner : sheet.model.settingOut.corners) {
    const glm::vec3 p = sheet.scene.local({corner.at, sheet.model.settingOut.levels.dampCourse});
    const auto at = sheet.onSheet(p);
    if (at && at->x > bestX) bestX = at->x, best = glm::vec2(p);
  }
  return best;
}

double standingTop(const OverlaySheet& sheet) {
  double top = -1e9;
  const auto& elements = sheet.model.works.elements;
  for (size_t i = 0; i < elements.size(); ++i) {
    const auto kind = elements[i].kind;
    const bool counts = kind != model::ElementKind::Ground && kind != model::ElementKind::Topsoil &&
                        kind != model::ElementKind::Spoil &&
                        kind != model::ElementKind::StandingBuilding && !model::isTemporary(kind);
    const ElementRange& range = sheet.scene.elements[i];
    if (counts && double(range.appears) < sheet.frame.time) top = std::max(top, elements[i].top);
  }
  return top;
}

void drawMark(OverlaySheet& sheet, const RodMark& mark, const glm::vec2& point, float y,
              float opacity) {
  const Pen& pen = sheet.pen;
  const float u = pen.unit();
  const float x = point.x + kTextAside * u;
  const std::string value = model::levelText(mark.level);
  const float top = y - pen.lineHeight() * 0.5f;
  const float width = pen.size(value, Cut::Bold).x;
  // The course is what a bricklayer looks for: the name gives way to it.
  const std::string course = ", " + courseWords(sheet.model, mark.level);
  const float room = sheet.layout.rod.left - 22 * u - x - width - 7 * u - pen.size(course).x;
  const std::string rest = pen.shortened(mark.name, std::max(40 * u, room)) + course;
  pen.levelMark({point.x + 9 * u, point.y}, 10 * u, ink::kLevels, mark.priority == 2, opacity);
  pen.line({point.x, point.y}, {point.x + 18 * u, point.y}, ink::kLevels, 1.3f, opacity);
  pen.line({point.x + 18 * u, point.y}, {x - 4 * u, y}, ink::kLevels, 1, 0.8f * opacity);
  // Paper behind, for the column may stand over a roof next door.
  pen.fill(Box{x, top, x + width + 7 * u + pen.size(rest).x, top + pen.lineHeight()}.grown(2 * u),
           ink::kPaper, 0.72f);
  pen.haloText({x, top}, ink::kLevels, value, Cut::Bold, opacity);
  pen.haloText({x + width + 7 * u, top}, ink::kLevels, rest, Cut::Text, opacity);
  sheet.taken.push_back(
      {point.x, top, x + width + 7 * u + pen.size(rest).x, top + pen.lineHeight()});
}

}  // namespace

std::optional<float> levelColumnLeft(const OverlaySheet& sheet) {
  if (isPlan(sheet.frame.camera)) return std::nullopt;  // every height falls on one point
  const auto corner = rightmostCorner(sheet);
  if (!corner) return std::nullopt;
  float right = -1e30f;
  for (const auto& level : sheet.model.settingOut.schedule)
    if (const auto at = sheet.onSheet({corner->x, corner->y, float(level.level)}))
      right = std::max(right, at->x);
  const float u = sheet.pen.unit();
  // However near the eye comes, the texts stay on the sheet.
  return std::clamp(right + 4 * u, sheet.layout.drawing.left,
                    sheet.layout.rod.left - (kTextAside + kLeastText) * u);
}

void drawLevelMarks(OverlaySheet& sheet) {
  const auto left = levelColumnLeft(sheet);
  const auto corner = rightmostCorner(sheet);
  if (!left || !corner) return;
  const auto marks = rodMarks(sheet.model.settingOut.schedule);
  std::vector<ColumnItem> items;
  std::vector<glm::vec2> points;
  for (const RodMark& mark : marks) {
    const auto at = sheet.onSheet({corner->x, corner->y, float(mark.level)});
    points.emplace_back(*left, at ? at->y : -1e6f);
    items.push_back({points.back().y, mark.priority});
  }
  const float u = sheet.pen.unit();
  // The column keeps clear of everything fixed that it could run over or under.
  const float textLeft = *left + kTextAside * u;
  float from = sheet.layout.sheet.top + 22 * u, to = sheet.layout.tape.top - 34 * u;
  const float middle = (from + to) / 2;
  for (const Box& box : sheet.furniture) {
    if (box.right < *left - 6 * u || box.left > sheet.layout.rod.left - 60 * u) continue;
    if (box.left > textLeft + 330 * u) continue;
    if (box.centre().y < middle) from = std::max(from, box.bottom + 4 * u);
    if (box.centre().y > middle) to = std::min(to, box.top - 8 * u);
  }
  const double top = standingTop(sheet);
  for (const RodLabel& label :
       layOutColumn(items, sheet.pen.lineHeight() * 1.16f,
                    {sheet.layout.sheet.top, sheet.layout.tape.top - 8 * u}, {from, to})) {
    const RodMark& mark = marks[label.mark];
    // Heights that nothing has reached yet stay quiet.
    drawMark(sheet, mark, points[label.mark], label.y, mark.level > top + 0.0005 ? 0.5f : 1.0f);
  }
}

}  // namespace viewer
