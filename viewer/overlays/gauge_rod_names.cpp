// What is said beside the nearest gauge rod, level by level.
#include <algorithm>
#include <cmath>

#include "model/level_text.h"
#include "viewer/overlays/gauge_rod_parts.h"
#include "viewer/overlays/rod_names.h"

namespace viewer {
namespace {

// A text beside the rod, with the level that it speaks of.
struct Named {
  double level = 0;
  std::string figure, words;  // the figure stands next to the rod
  Cut cut = Cut::Text;
  int priority = 0;
  bool tied = true;  // by a line to the rod
};

constexpr float kFigureGap = 8;  // units, between figure and words

float widthOf(const Pen& pen, const Named& name) {
  const float words = pen.size(name.words, name.cut).x;
  return name.figure.empty() ? words
                             : pen.size(name.figure, Cut::Bold).x + kFigureGap * pen.unit() + words;
}

int priorityOf(const std::string& key) {
  const auto begins = [&](const char* with) { return key.rfind(with, 0) == 0; };
  if (begins("lift:")) return 0;
  if (begins("sill:") || begins("head:")) return 2;
  return begins("damp-course") || begins("top-of-concrete") ? 4 : 3;
}

// The marks of one height in one text, the most important first.
std::vector<Named> marksOf(const model::GaugeRod& rod) {
  std::vector<const model::GaugeMark*> marks;
  for (const model::GaugeMark& mark : rod.marks) marks.push_back(&mark);
  const auto millimetres = [](double level) { return std::lround(level * 1000); };
  std::stable_sort(marks.begin(), marks.end(), [&](const auto* a, const auto* b) {
    if (millimetres(a->level) != millimetres(b->level)) return a->level < b->level;
    return priorityOf(a->key) > priorityOf(b->key);
  });
  std::vector<Named> names;
  for (const model::GaugeMark* mark : marks) {
    const std::string words = mark->where.empty() ? mark->name : mark->name + ", " + mark->where;
    if (!names.empty() && millimetres(names.back().level) == millimetres(mark->level))
      names.back().words += " / " + words;
    else
      names.push_back({mark->level, model::levelText(mark->level), words, Cut::Text,
                       priorityOf(mark->key), true});
  }
  return names;
}

// What the column of levels says already is not said twice.
bool saidElsewhere(const OverlaySheet& sheet, const Named& name) {
  if (!sheet.levelsShown) return false;
  const auto marks = shownMarks(sheet);
  return std::any_of(marks.begin(), marks.end(), [&](const RodMark& mark) {
    return model::levelText(mark.level) == name.figure;
  });
}

// The marks, the courses that are not whole, and which rod it is.
std::vector<Named> namesOf(const OverlaySheet& sheet, const StandingRod& rod) {
  std::vector<Named> names = marksOf(*rod.rod);
  std::erase_if(names, [&](const Named& name) { return saidElsewhere(sheet, name); });
  for (const model::RodCourse& course : rod.rod->courses) {
    const std::string words = model::oddCourseText(course);
    if (!words.empty())
      names.push_back({(course.bottom + course.top()) / 2, "", words, Cut::Text, 3, true});
  }
  std::string which = "Gauge rod " + sheet.model.settingOut.corners[rod.rod->corner].letter;
  if (rod.asBuilt) which += ", as built";
  if (!rod.stands) which += ", nothing to stand on yet";
  names.push_back({rod.rod->top, "", which, Cut::Bold, 5, false});
  return names;
}

// Those whose levels are on the sheet, from top to bottom.
struct Column {
  std::vector<Named> names;
  std::vector<RodName> wanted;
  float left = 1e9f, right = -1e9f;  // of the rod, where it is named
};

Column columnOf(const OverlaySheet& sheet, const StandingRod& rod, const Box& room, float line) {
  Column column;
  std::vector<Named> names = namesOf(sheet, rod);
  const auto heightOf = [&](const Named& name) {
    const auto at = sheet.onSheet(rod.point(name.level));
    return at ? at->y - (name.tied ? 0 : line) : -1e9f;
  };
  std::stable_sort(names.begin(), names.end(),
                   [&](const Named& a, const Named& b) { return heightOf(a) < heightOf(b); });
  for (Named& name : names) {
    const auto at = sheet.onSheet(rod.point(name.level));
    if (!at || (name.tied && !room.contains(*at))) continue;
    const float y = std::max(heightOf(name), room.top);
    column.wanted.push_back({y, widthOf(sheet.pen, name), name.priority});
    column.names.push_back(std::move(name));
    column.left = std::min(column.left, at->x - rod.half);
    column.right = std::max(column.right, at->x + rod.half);
  }
  return column;
}

struct NamesBeside {
  std::vector<PlacedRodName> placed;
  float way = 1, edge = 0;
};

// How much of the names is told: each counts by what it has of its width.
float told(const std::vector<PlacedRodName>& placed, const std::vector<RodName>& wanted) {
  float sum = 0;
  for (const PlacedRodName& each : placed)
    sum += std::min(1.0f, each.box.width() / std::max(1.0f, wanted[each.name].width));
  return sum;
}

// On the outer side, close by or further off; on the other only where that tells far more.
NamesBeside nameBeside(const Column& column, const RodNameRoom& room, float way, float unit) {
  constexpr float kInner = 0.6f;
  NamesBeside best;
  float most = 0;
  for (const float side : {way, -way})
    for (const float off : {16.0f, 46.0f, 76.0f}) {
      const float edge = (side > 0 ? column.right : column.left) + side * off * unit;
      auto placed = placeRodNames(column.wanted, edge, side, room);
      const float worth = told(placed, column.wanted) * (side == way ? 1 : kInner);
      if (worth <= most * 1.02f) continue;
      most = worth;
      best = {std::move(placed), side, edge};
    }
  return best;
}

RodNameRoom roomOf(const OverlaySheet& sheet) {
  const float u = sheet.pen.unit();
  RodNameRoom room;
  room.sheet = sheet.layout.drawing;
  room.sheet.left -= sheet.options.viewIsButton ? 0 : 30 * u;
  room.sheet.right -= room.gap + u;
  room.taken = sheet.taken;
  room.line = sheet.pen.lineHeight() * 1.12f;
  room.most = 330 * u;
  room.least = 90 * u;
  return room;
}

// The figure next to the rod, the words as far as they fit.
void letterName(const Pen& pen, const Named& name, float way, const Box& box) {
  const float y = box.centre().y - pen.lineHeight(name.cut) * 0.5f;
  const unsigned rgb = name.tied ? ink::kLevelWords : ink::kInk;
  const float figure = pen.size(name.figure, Cut::Bold).x;
  const float taken = name.figure.empty() ? 0 : figure + kFigureGap * pen.unit();
  if (!name.figure.empty())
    pen.text({way > 0 ? box.left : box.right - figure, y}, rgb, name.figure, Cut::Bold);
  const std::string words = pen.shortened(name.words, box.width() - taken + 0.5f, name.cut);
  const float left = way > 0 ? box.left + taken : box.right - taken - pen.size(words, name.cut).x;
  pen.text({left, y}, rgb, words, name.cut);
}

void drawName(OverlaySheet& sheet, const StandingRod& rod, const Named& name,
              const NamesBeside& beside, const Box& box) {
  const Pen& pen = sheet.pen;
  const float u = pen.unit();
  const auto at = acrossAt(sheet, rod, name.level);
  if (at && name.tied) {
    const bool dim = sheet.hidden(rod.point(name.level));
    pen.line(at->left, at->right, ink::kInk, name.priority > 3 ? 2.4f : 1.6f, dim ? 0.3f : 1);
    pen.line(beside.way > 0 ? at->right : at->left,
             {beside.edge - beside.way * 4 * u, box.centre().y}, ink::kLevels, 1.1f,
             dim ? 0.5f : 0.9f);
  }
  pen.fill(box.grown(2 * u), ink::kPaper, 0.86f);
  letterName(pen, name, beside.way, box);
  sheet.taken.push_back(box.grown(2 * u));
}

}  // namespace

void drawRodNames(OverlaySheet& sheet, const StandingRod& rod) {
  const RodNameRoom room = roomOf(sheet);
  const Column column = columnOf(sheet, rod, room.sheet, room.line);
  const NamesBeside beside = nameBeside(column, room, rod.way, sheet.pen.unit());
  for (const PlacedRodName& each : beside.placed)
    drawName(sheet, rod, column.names[each.name], beside, each.box);
}

}  // namespace viewer
