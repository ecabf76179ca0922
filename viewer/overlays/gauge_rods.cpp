// The gauge rod of every corner, standing beside it: the nearest one with its courses, marks and
// names, the others as thin laths.
#include <algorithm>
#include <cmath>
#include <numeric>

#include "viewer/overlays/gauge_rod_parts.h"
#include "viewer/overlays/overlay_sheet.h"
#include "viewer/overlays/words.h"

namespace viewer {
namespace {

constexpr float kLeast = 22;     // units: the width of the nearest rod, for figures on its face
constexpr float kThin = 4;       // of the others
constexpr float kShortest = 60;  // shorter ones carry no names
constexpr float kDim = 0.18f;    // what something hides

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
  if (told) drawRodNames(sheet, rod);
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
