// The gauge rod of every corner, standing beside it: the nearest one with its courses, marks and
// names, the others as thin laths.
#include <algorithm>
#include <cmath>
#include <numeric>

#include <glm/geometric.hpp>

#include "model/level_text.h"
#include "viewer/overlays/gauge_rod_place.h"
#include "viewer/overlays/overlay_sheet.h"
#include "viewer/overlays/rod_names.h"
#include "viewer/overlays/words.h"

namespace viewer {
namespace {

constexpr float kLeast = 22;     // units: the width of the nearest rod, for figures on its face
constexpr float kThin = 4;       // of the others
constexpr float kShortest = 60;  // shorter ones carry no names
constexpr float kDim = 0.18f;    // what something hides

// A level of the rod where it lies on the sheet, at its left and right edge.
struct Across {
  glm::vec2 left{0, 0}, right{0, 0};
  glm::vec2 middle() const { return (left + right) * 0.5f; }
};

std::optional<Across> acrossAt(const OverlaySheet& sheet, const StandingRod& rod, double level) {
  const auto at = sheet.onSheet(rod.point(level));
  if (!at) return std::nullopt;
  return Across{*at - glm::vec2(rod.half, 0), *at + glm::vec2(rod.half, 0)};
}

bool onAny(const std::vector<Box>& boxes, const Box& box) {
  return std::any_of(boxes.begin(), boxes.end(),
                     [&](const Box& other) { return other.overlaps(box); });
}

Box boxOf(const Across& low, const Across& high) {
  return {std::min(low.left.x, high.left.x), std::min(low.left.y, high.left.y),
          std::max(low.right.x, high.right.x), std::max(low.right.y, high.right.y)};
}

unsigned fillOf(const model::RodCourse& course) {
  return course.kind == model::CourseKind::Whole ? ink::kRod : ink::kTape;
}

// Which of a rod's courses nothing hides: looked at every few courses.
std::vector<bool> seenCourses(const OverlaySheet& sheet, const StandingRod& rod) {
  constexpr size_t kEvery = 4;
  std::vector<bool> seen;
  for (size_t i = 0; i < rod.rod->courses.size(); ++i) {
    const model::RodCourse& course = rod.rod->courses[i];
    seen.push_back(i % kEvery ? seen.back()
                              : !sheet.hidden(rod.point((course.bottom + course.top()) / 2)));
  }
  return seen;
}

// One course on the face, with the line that it is laid to.
void drawCourse(OverlaySheet& sheet, const StandingRod& rod, const model::RodCourse& course,
                bool seen, bool line) {
  const auto low = acrossAt(sheet, rod, course.bottom), high = acrossAt(sheet, rod, course.top());
  if (!low || !high) return;
  const float strong = seen ? 1 : kDim;
  const Pen& pen = sheet.pen;
  pen.list()->AddQuadFilled(im(low->left), im(low->right), im(high->right), im(high->left),
                            colour(fillOf(course), 0.95f * strong));
  pen.line(low->left, high->left, ink::kInk, 1.2f, strong);
  pen.line(low->right, high->right, ink::kInk, 1.2f, strong);
  const Across& mark = course.number > 0 ? *high : *low;
  if (line) pen.line(mark.left, mark.right, ink::kInk, 1, 0.8f * strong);
}

double pitchOf(const OverlaySheet& sheet, const StandingRod& rod) {
  const auto low = sheet.onSheet(rod.point(rod.rod->foot));
  const auto high = sheet.onSheet(rod.point(rod.rod->top));
  if (!low || !high || rod.rod->courses.empty()) return 0;
  return double(std::abs(low->y - high->y)) / double(rod.rod->courses.size());
}

// Returns which courses are seen.
std::vector<bool> drawBody(OverlaySheet& sheet, const StandingRod& rod, double leastPitch) {
  const bool lines = pitchOf(sheet, rod) >= leastPitch * double(sheet.pen.unit());
  const std::vector<bool> seen = seenCourses(sheet, rod);
  for (size_t i = 0; i < seen.size(); ++i)
    drawCourse(sheet, rod, rod.rod->courses[i], seen[i], lines);
  return seen;
}

// The number of every course that has room for it, else of every second, fifth, tenth.
void drawFigures(OverlaySheet& sheet, const StandingRod& rod, const std::vector<bool>& seen) {
  constexpr float kLeastPixels = 10.6f;
  const Pen pen =
      sheet.pen.sized(std::max(0.72f, kLeastPixels / std::max(1.0f, sheet.pen.lineHeight())));
  const double pitch = pitchOf(sheet, rod);
  int step = 50;
  for (const int each : {20, 10, 5, 2, 1})
    if (pitch * each >= 1.2 * double(pen.lineHeight())) step = each;
  std::vector<Box> figures;  // seen at a slant, some courses are lower than others
  for (size_t i = 0; i < rod.rod->courses.size(); ++i) {
    const model::RodCourse& course = rod.rod->courses[i];
    if (!seen[i] || course.number % step != 0) continue;
    const auto at = sheet.onSheet(rod.point((course.bottom + course.top()) / 2));
    const std::string text = std::to_string(course.number);
    const glm::vec2 size = pen.size(text);
    if (!at || size.x > 2 * rod.half - 2) continue;
    const Box box = Box::at(*at - size * 0.5f, size);
    if (!box.inside(sheet.layout.sheet) || onAny(sheet.taken, box) || onAny(figures, box)) continue;
    figures.push_back(box);
    if (step > 1 || pitch < 1.2 * double(size.y)) pen.fill(box.grown(-0.5f), fillOf(course), 0.9f);
    pen.text({box.left, box.top}, ink::kInk, text);
  }
}

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

void drawNames(OverlaySheet& sheet, const StandingRod& rod) {
  const RodNameRoom room = roomOf(sheet);
  const Column column = columnOf(sheet, rod, room.sheet, room.line);
  const NamesBeside beside = nameBeside(column, room, rod.way, sheet.pen.unit());
  for (const PlacedRodName& each : beside.placed)
    drawName(sheet, rod, column.names[each.name], beside, each.box);
}

// So that no label stands on it.
void takeBody(OverlaySheet& sheet, const StandingRod& rod) {
  for (const model::RodCourse& course : rod.rod->courses) {
    const auto low = acrossAt(sheet, rod, course.bottom), high = acrossAt(sheet, rod, course.top());
    if (!low || !high) continue;
    const Box box = boxOf(*low, *high);
    if (box.overlaps(sheet.layout.sheet)) sheet.taken.push_back(box);
  }
}

void drawFull(OverlaySheet& sheet, const StandingRod& rod) {
  const double pitch = pitchOf(sheet, rod);
  const std::vector<bool> seen = drawBody(sheet, rod, 2.5);
  const double tall = pitch * double(rod.rod->courses.size());
  const bool told = pitch == 0 || tall >= double(kShortest * sheet.pen.unit());
  if (told) drawFigures(sheet, rod, seen);
  takeBody(sheet, rod);
  if (told) drawNames(sheet, rod);
}

// From above a rod is its end.
void drawEnd(const OverlaySheet& sheet, const StandingRod& rod) {
  const auto at = sheet.onSheet(rod.point(rod.rod->top));
  if (!at) return;
  const Box box = Box{at->x, at->y, at->x, at->y}.grown(4 * sheet.pen.unit());
  sheet.pen.fill(box, ink::kRod);
  sheet.pen.outline(box, ink::kInk, 1.4f);
}

}  // namespace

void drawGaugeRods(OverlaySheet& sheet, const std::vector<CornerRod>& rods) {
  const float u = sheet.pen.unit();
  const bool plan = isPlan(sheet.frame.camera);
  const auto thin = standRods(sheet, rods, kThin * u);
  if (thin.empty()) return;
  const size_t nearest = nearestRod(sheet, thin);
  // The furthest first: one that stands before another lies over it.
  std::vector<size_t> order(thin.size());
  std::iota(order.begin(), order.end(), size_t(0));
  std::stable_sort(order.begin(), order.end(),
                   [&](size_t a, size_t b) { return thin[a].depth > thin[b].depth; });
  for (const size_t i : order) {
    if (plan) drawEnd(sheet, thin[i]);
    if (!plan && i != nearest) drawBody(sheet, thin[i], 3);
  }
  if (plan) return;
  if (const auto rod = standRod(sheet, rods[thin[nearest].rod->corner], kLeast * u))
    drawFull(sheet, *rod);
}

}  // namespace viewer
