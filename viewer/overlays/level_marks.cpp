// The scheduled levels in their column: each with its mark, value, names and course, tied to the
// building on one side and to the rod on the other.
#include <algorithm>
#include <cmath>

#include "model/level_text.h"
#include "viewer/overlays/level_columns.h"
#include "viewer/overlays/overlay_sheet.h"
#include "viewer/overlays/words.h"
#include "viewer/standing.h"

namespace viewer {
namespace {

constexpr float kMark = 17;  // units that the mark takes before the value
constexpr float kStepLeft = 34;
constexpr float kStep = 46;      // over which a leader goes from a text's height to the true one
constexpr double kSteep = 1.0;   // radians up
constexpr float kFromPaper = 5;  // from the column's edge to its leaders

// The corners of the plan that stand furthest to one side on the sheet.
struct Sides {
  std::optional<glm::vec2> left, right;  // local
};

Sides outermost(const OverlaySheet& sheet) {
  Sides sides;
  float low = 1e30f, high = -1e30f;
  for (const model::Corner& corner : sheet.model.settingOut.corners) {
    const glm::vec3 p = sheet.scene.local({corner.at, sheet.model.settingOut.levels.dampCourse});
    const auto at = sheet.onSheet(p);
    if (!at) continue;
    if (at->x < low) low = at->x, sides.left = glm::vec2(p);
    if (at->x > high) high = at->x, sides.right = glm::vec2(p);
  }
  return sides;
}

// For each mark how much of what lies at its height is there: 0 nothing, 0.5 some, 1 all.
std::vector<float> sharesMade(const OverlaySheet& sheet, const std::vector<RodMark>& marks) {
  constexpr double kSame = 1e-6;
  const std::vector<double>& times = sheet.options.facts->levelTimes;
  std::vector<float> shares;
  for (const RodMark& mark : marks) {
    const auto made = std::count_if(mark.lines.begin(), mark.lines.end(), [&](size_t line) {
      return times[line] <= sheet.frame.time + kSame;
    });
    shares.push_back(made == 0 ? 0.0f : made == std::ssize(mark.lines) ? 1.0f : 0.5f);
  }
  return shares;
}

struct Drawing {
  OverlaySheet& sheet;
  const std::vector<RodMark>& marks;  // highest first, one for each item
  Pen pen;                            // with letters of the plan's size
  LevelColumnWidths widths;
  Sides sides;
  RodScale rod;
  std::vector<float> made;  // of each mark: see sharesMade
  bool besideBuilding = false;
  bool fromAbove = false;                 // so steeply that all heights fall nearly on one point
  std::optional<model::Instrument> from;  // then readings stand where courses do
};

// True when ties from the marks to a corner would run into one broad bar: in plan, and near it.
bool heightsFallTogether(const Drawing& d) {
  constexpr float kApart = 3.5f;  // units from tie to tie, on average
  const OverlaySheet& sheet = d.sheet;
  if (isPlan(sheet.frame.camera)) return true;
  // From low down, and far off, heights lie close as well, but in their order beside the walls.
  if (sheet.frame.camera.elevation < kSteep) return false;
  const auto& corner = d.sides.right;
  if (!corner || d.marks.size() < 2) return false;
  const auto highest = sheet.onSheet({corner->x, corner->y, float(d.marks.front().level)});
  const auto lowest = sheet.onSheet({corner->x, corner->y, float(d.marks.back().level)});
  if (!highest || !lowest) return false;
  return lowest->y - highest->y < kApart * sheet.pen.unit() * float(d.marks.size() - 1);
}

// From the text to the building, at the true height.
void tieToBuilding(const Drawing& d, const LevelLine& line) {
  const Pen& pen = d.sheet.pen;
  const float u = pen.unit(), way = line.left ? 1.0f : -1.0f;
  const auto& corner = line.left ? d.sides.left : d.sides.right;
  if (!corner) return;
  const auto point = d.sheet.onSheet({corner->x, corner->y, float(d.marks[line.item].level)});
  const Box& area = d.sheet.layout.sheet;
  if (!point || point->y < area.top || point->y > area.bottom) return;
  const Box& column = line.left ? d.sheet.layout.levelsLeft : d.sheet.layout.levels;
  const float edge = line.left ? column.right : column.left, y = line.box.centre().y;
  const glm::vec2 start{edge + way * kFromPaper * u, y};
  const glm::vec2 bend{edge + way * (line.left ? kStepLeft : kStep) * u, point->y};
  pen.line({edge, y}, start, ink::kLevels, 1.2f, 0.9f);
  pen.line(start, bend, ink::kLevels, 1.1f, 0.9f);
  float far = line.left ? std::max(bend.x, point->x - 4 * u) : std::min(bend.x, point->x + 4 * u);
  // Words stay clear of the line.
  for (const Box& words : d.sheet.furniture) {
    if (point->y < words.top || point->y > words.bottom) continue;
    if (!line.left && words.right <= bend.x) far = std::max(far, words.right + 3 * u);
    if (line.left && words.left >= bend.x) far = std::min(far, words.left - 3 * u);
  }
  pen.line(bend, {far, point->y}, ink::kLevels, 1, d.made[line.item] > 0 ? 0.6f : 0.4f);
}

void tieToRod(const Drawing& d, const LevelLine& line) {
  const Pen& pen = d.sheet.pen;
  const float u = pen.unit();
  const Box& rod = d.sheet.layout.rod;
  const float trueY = d.rod.yAt(d.marks[line.item].level);
  if (trueY < rod.top || trueY > rod.bottom) return;
  const float y = line.box.centre().y, from = d.sheet.layout.levels.right;
  pen.line({from + 3 * u, y}, {from + 8 * u, y}, ink::kInk, 1, 0.6f);
  pen.line({from + 8 * u, y}, {rod.left - 8 * u, trueY}, ink::kInk, 1, 0.6f);
}

void drawSign(const Drawing& d, const LevelLine& line) {
  const Pen& pen = d.sheet.pen;
  const float size = std::min(9 * pen.unit(), line.box.height() * 0.6f);
  const glm::vec2 middle{line.box.left + 6 * pen.unit(), line.box.centre().y};
  const Box& area = d.sheet.layout.sheet;
  const float made = d.made[line.item];
  if (line.trueY < area.top) {  // higher than the sheet: the sign points there
    pen.levelMark(middle - glm::vec2(0, size / 2), -size, ink::kLevels, made);
    return;
  }
  pen.levelMark(middle + glm::vec2(0, size / 2), size, ink::kLevels, made);
}

void drawLine(const Drawing& d, const LevelItem& item, const LevelLine& line) {
  const unsigned rgb = d.besideBuilding ? ink::kLevelWords : ink::kInk;
  const float gap = d.widths.gap, left = line.box.left + d.widths.mark;
  // Many to a line can be wider than their share of it: better small than over each other.
  const Pen pen = d.pen.fitted(item.value, line.box.right - left - 2, Cut::Bold, 0.05f);
  if (d.besideBuilding && d.widths.mark > 0) drawSign(d, line);
  const float top = line.box.centre().y - pen.lineHeight() / 2;
  const float value = left + std::max(0.0f, d.widths.value - pen.size(item.value, Cut::Bold).x);
  pen.text({std::min(value, line.box.right - pen.size(item.value, Cut::Bold).x), top}, rgb,
           item.value, Cut::Bold);
  const Pen names = pen.fitted(line.name, line.room);
  names.text({left + d.widths.value + gap, line.box.centre().y - names.lineHeight() / 2}, rgb,
             line.name);
  if (line.course) pen.text({line.box.right - pen.size(item.course).x, top}, rgb, item.course);
}

// What filled and open marks mean, where there is room for it.
void drawKey(const Drawing& d, float left, float right, float top) {
  struct Word {
    float filled;
    const char* text;
  };
  constexpr Word kWords[] = {{1, "made"}, {0, "to come"}};
  const Pen& pen = d.pen;
  const float size = std::min(9 * d.sheet.pen.unit(), pen.lineHeight() * 0.6f), mark = size * 1.6f;
  float width = 0;
  for (const Word& word : kWords) width += mark + pen.size(word.text).x + size;
  if (left + width > right) return;
  for (const Word& word : kWords) {
    pen.levelMark({left + size * 0.62f, top + pen.lineHeight() / 2 + size / 2}, size, ink::kLevels,
                  word.filled);
    pen.text({left + mark, top}, ink::kSoft, word.text);
    left += mark + pen.size(word.text).x + size;
  }
}

void drawHeading(const Drawing& d, const Box& column, float top) {
  const Pen& pen = d.pen;
  const std::string what = "Levels, m", course = d.from ? "staff" : "course";
  pen.text({column.left, top}, ink::kSoft, what, Cut::Bold);
  const float gap = pen.unit() * 8, width = pen.size(course).x;
  float left = column.left + pen.size(what, Cut::Bold).x + gap, right = column.right;
  if (d.sheet.layout.levelPlan.perLine == 1 && left + width < right) {
    right -= width;
    pen.text({right, top}, ink::kSoft, course);
  }
  if (d.besideBuilding && d.widths.mark > 0) drawKey(d, left + gap, right - 2 * gap, top);
}

// The column that is used, as high as its lines.
void layPaper(const Drawing& d, const std::vector<LevelLine>& lines, bool left) {
  const Box& column = left ? d.sheet.layout.levelsLeft : d.sheet.layout.levels;
  const float u = d.sheet.pen.unit();
  float top = column.bottom, bottom = column.top;
  for (const LevelLine& line : lines) {
    if (line.left != left) continue;
    top = std::min(top, line.box.top);
    bottom = std::max(bottom, line.box.bottom);
  }
  if (bottom <= top) return;
  top = std::max(column.top, top - d.sheet.layout.levelPlan.text * kLevelLine);
  const Box paper{column.left - 5 * u, top - 4 * u, column.right + 4 * u, bottom + 4 * u};
  d.sheet.pen.fill(paper, ink::kPaper, 0.88f);
  d.sheet.over.push_back(paper);
  drawHeading(d, column, top);
}

std::string courseText(const model::Model& model, double level) {
  const std::string words = courseWords(model, level);
  return words.substr(words.find(' ') + 1);
}

std::vector<LevelItem> itemsOf(const Drawing& d) {
  const OverlaySheet& sheet = d.sheet;
  std::vector<LevelItem> items;
  for (const RodMark& mark : d.marks) {
    LevelItem item;
    item.value = model::levelText(mark.level);
    item.names = mark.names;
    item.where = mark.where;
    item.lift = mark.lift;
    item.course = d.from ? shortReading(*d.from, mark.level) : courseText(sheet.model, mark.level);
    item.opening = mark.priority == 0;
    item.yRight = item.yLeft = d.rod.yAt(mark.level);
    const auto heightAt = [&](const std::optional<glm::vec2>& corner, float& y) {
      if (!d.besideBuilding || !corner || d.fromAbove) return;
      const auto at = sheet.onSheet({corner->x, corner->y, float(mark.level)});
      if (at) y = at->y;
    };
    heightAt(d.sides.right, item.yRight);
    heightAt(d.sides.left, item.yLeft);
    items.push_back(item);
  }
  return items;
}

}  // namespace

void drawLevelMarks(OverlaySheet& sheet) {
  auto marks = shownMarks(sheet);
  std::reverse(marks.begin(), marks.end());
  if (marks.empty()) return;
  SheetLayout& layout = sheet.layout;
  // Fewer than the sheet was laid out for may be written larger.
  if (marks.size() < layout.levelPlan.right + layout.levelPlan.left)
    layout.levelPlan = planLevels(marks.size(), layout.levels.height(), 0, sheet.pen.unit());
  const float full = sheet.pen.lineHeight();
  const auto& setUp = sheet.options.standing;
  const auto instrument = setUp ? instrumentOf(sheet.model.job, *setUp) : std::nullopt;
  Drawing d{sheet,
            marks,
            sheet.pen.sized(sheet.layout.levelPlan.text / full),
            {},
            outermost(sheet),
            rodScaleOf(sheet.model, sheet.frame, sheet.layout),
            sharesMade(sheet, marks),
            sheet.levelsShown,
            false,
            instrument};
  d.fromAbove = heightsFallTogether(d);
  const auto items = itemsOf(d);
  const MeasureLevel measure = [&](const std::string& text, bool bold) {
    return d.pen.size(text, bold ? Cut::Bold : Cut::Text).x;
  };
  const float mark = d.besideBuilding ? kMark * sheet.pen.unit() : 0;
  d.widths = levelColumnWidths(items, sheet.layout, mark, measure);
  const auto lines = layOutLevels(items, sheet.layout, d.widths, measure);
  for (const bool left : {false, true}) layPaper(d, lines, left);
  const bool tied = sheet.layout.levelPlan.perLine == 1;
  for (const LevelLine& line : lines) {
    if (d.besideBuilding && !d.fromAbove && tied) tieToBuilding(d, line);
    if (sheet.rodShown && !line.left && tied) tieToRod(d, line);
    drawLine(d, items[line.item], line);
  }
}

}  // namespace viewer
