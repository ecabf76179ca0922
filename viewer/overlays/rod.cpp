// Draws the rod: graduations, the scheduled levels, and the pointer of the level plane.
#include <algorithm>
#include <cmath>
#include <cstdio>

#include "model/level_text.h"
#include "viewer/overlays/overlay_sheet.h"
#include "viewer/overlays/words.h"
#include "viewer/standing.h"

namespace viewer {
namespace {

// Whole metres, as on a staff: under their line.
void figure(const Pen& pen, const Box& rod, float y, double metres) {
  char text[16];
  std::snprintf(text, sizeof text, "%+.0f", metres);
  const Pen small = pen.sized(0.85f);
  const std::string words = std::abs(metres) < 0.5 ? "0" : text;
  const glm::vec2 size = small.size(words);
  if (size.x > rod.width() - 4 * pen.unit() || y + size.y > rod.bottom) return;
  small.text({rod.right - size.x - 3 * pen.unit(), y + pen.unit()}, ink::kInk, words);
}

void drawGraduations(const Pen& pen, const Box& rod, const RodScale& scale) {
  const float u = pen.unit();
  pen.fill({rod.left + 3 * u, rod.top + 4 * u, rod.right + 3 * u, rod.bottom + 4 * u}, ink::kInk,
           0.10f);
  pen.fill(rod, ink::kRod);
  // The finest step that can still be told apart.
  double step = 0.1;
  for (const double next : {0.5, 1.0, 5.0})
    if (step * scale.perMetre < 6 * double(u)) step = next;
  const long first = std::lround(std::ceil(scale.levelAt(rod.bottom) / step));
  const long last = std::lround(std::floor(scale.levelAt(rod.top) / step));
  for (long i = first; i <= last; ++i) {
    const float y = scale.yAt(double(i) * step);
    const double metres = double(i) * step;
    const bool whole = std::abs(metres - std::round(metres)) < 1e-6;
    const bool half = std::abs(metres * 2 - std::round(metres * 2)) < 1e-6;
    const float length = whole ? rod.width() : rod.width() * (half ? 0.5f : 0.3f);
    pen.line({rod.left, y}, {rod.left + length, y}, ink::kInk, whole ? 1.5f : 1);
    if (whole) figure(pen, rod, y, metres);
  }
  pen.outline(rod, ink::kInk, 1.5f);
}

// Every level has its mark, at its own height to the pixel; the column of levels names them all,
// the pointer the one that it is at.
void drawMarks(OverlaySheet& sheet, const RodScale& scale) {
  const float u = sheet.pen.unit();
  const Box& rod = sheet.layout.rod;
  for (const RodMark& mark : shownMarks(sheet)) {
    const float y = scale.yAt(mark.level);
    if (y < rod.top || y > rod.bottom) continue;
    const bool main = mark.priority == 2;
    sheet.pen.line({rod.left - 8 * u, y}, {rod.left, y}, ink::kInk, main ? 1.8f : 1.2f);
  }
}

// The mark under the pointer says what it is.
void nameMarkAt(OverlaySheet& sheet, const RodScale& scale) {
  const Pen& pen = sheet.pen;
  const float u = pen.unit();
  const Box& rod = sheet.layout.rod;
  const auto& pointer = sheet.options.pointer;
  const Box reach{rod.left - 12 * u, rod.top, rod.right + 4 * u, rod.bottom};
  if (sheet.levelsShown || !pointer || !reach.contains(*pointer)) return;
  const auto marks = rodMarks(sheet.model.settingOut.schedule, true);
  const auto away = [&](const RodMark& m) { return std::abs(scale.yAt(m.level) - pointer->y); };
  const auto nearest =
      std::min_element(marks.begin(), marks.end(),
                       [&](const RodMark& a, const RodMark& b) { return away(a) < away(b); });
  if (nearest == marks.end() || away(*nearest) > 6 * u) return;
  std::string words = model::levelText(nearest->level);
  for (const std::string& name : nearest->names) words += "  " + name;
  if (!nearest->lift.empty()) words += "  " + nearest->lift;
  words = pen.shortened(words, std::max(60 * u, rod.left - 80 * u));
  const glm::vec2 size = pen.size(words);
  const float top = std::clamp(scale.yAt(nearest->level) - size.y / 2, rod.top,
                               std::max(rod.top, rod.bottom - size.y));
  const Box card = Box::at({rod.left - 20 * u - size.x, top}, size).grown(5 * u);
  pen.fill(card, ink::kCard, 0.97f);
  pen.outline(card, ink::kInk, 1.2f);
  pen.text({card.left + 5 * u, card.top + 5 * u}, ink::kInk, words);
}

std::vector<std::string> pointerWords(const OverlaySheet& sheet, double level) {
  std::vector<std::string> words{model::levelText(level), courseWords(sheet.model, level)};
  const auto& setUp = sheet.options.standing;
  if (const auto from = setUp ? instrumentOf(sheet.model.job, *setUp) : std::nullopt) {
    words.push_back("staff " + shortReading(*from, level));
  } else if (const auto& mark = sheet.model.job.site.benchMark) {
    words.push_back("BM " + model::levelText(level - mark->level));
  }
  return words;
}

// Where the pointer's words stand.
struct PointerWords {
  std::vector<std::string> words;
  glm::vec2 at{0, 0}, size{0, 0};
  bool card = false;  // no room past the rod: on a card
  Box paper() const { return Box::at(at, size); }
};

PointerWords placePointer(const OverlaySheet& sheet, const RodScale& scale) {
  const Pen& pen = sheet.pen;
  const float u = pen.unit();
  const Box& rod = sheet.layout.rod;
  const double level = double(sheet.frame.levelPlaneAt);
  const float y = std::clamp(scale.yAt(level), rod.top, rod.bottom);
  const float line = pen.lineHeight() * 1.1f;
  PointerWords place;
  place.words = pointerWords(sheet, level);
  const float tall = line * float(place.words.size());
  float width = 0;
  for (const std::string& word : place.words)
    width = std::max({width, pen.size(word).x, pen.size(word, Cut::Bold).x});
  float top = std::clamp(y - line * 0.5f, rod.top, std::max(rod.top, rod.bottom - tall));
  float left = rod.right + 17 * u;
  if (left + width > sheet.layout.sheet.right - 2 * u) {
    place.card = true;
    // Before the rod, or over it where levels stand before it.
    left = rod.left - 14 * u - width;
    if (sheet.levelsShown) {
      left = sheet.layout.sheet.right - 8 * u - width;
      top = y + 14 * u + tall < rod.bottom ? y + 14 * u : y - 14 * u - tall;
    }
  }
  place.at = {left, top};
  place.size = {width, tall};
  return place;
}

void drawPointer(OverlaySheet& sheet, const RodScale& scale) {
  const Pen& pen = sheet.pen;
  const float u = pen.unit();
  const Box& rod = sheet.layout.rod;
  const float y = std::clamp(scale.yAt(double(sheet.frame.levelPlaneAt)), rod.top, rod.bottom);
  const float opacity = sheet.frame.levelPlane ? 1.0f : 0.45f;
  const ImU32 blue = colour(ink::kLevels, opacity);
  pen.list()->AddTriangleFilled({rod.right - u, y}, {rod.right + 13 * u, y - 8 * u},
                                {rod.right + 13 * u, y + 8 * u}, blue);
  if (!sheet.frame.levelPlane) return;
  pen.line({rod.left, y}, {rod.right, y}, ink::kLevels, 2);
  const PointerWords place = placePointer(sheet, scale);
  if (place.card) {
    pen.fill(place.paper().grown(5 * u), ink::kCard, 0.97f);
    pen.outline(place.paper().grown(5 * u), ink::kLevels, 1.2f);
  }
  const float line = pen.lineHeight() * 1.1f;
  for (size_t i = 0; i < place.words.size(); ++i)
    pen.text(place.at + glm::vec2(0, line * float(i)), ink::kLevelWords, place.words[i],
             i ? Cut::Text : Cut::Bold);
}

}  // namespace

RodScale rodScaleOf(const model::Model& model, const Frame& frame, const SheetLayout& layout) {
  double low = 0, high = 1;
  for (const auto& level : model.settingOut.schedule) {
    low = std::min(low, level.level);
    high = std::max(high, level.level);
  }
  return rodScale(frame.camera, layout.rod, layout.sheet.height(), low, high);
}

std::vector<RodMark> shownMarks(const OverlaySheet& sheet) {
  auto marks = rodMarks(sheet.model.settingOut.schedule, !sheet.levelsShown || sheet.layout.lifts);
  if (!sheet.levelsShown && !isElevation(sheet.frame.camera))
    std::erase_if(marks, [](const RodMark& mark) { return mark.priority == 0; });
  return marks;
}

std::optional<Box> rodPointerCard(const OverlaySheet& sheet) {
  if (!sheet.frame.levelPlane) return std::nullopt;
  const PointerWords place =
      placePointer(sheet, rodScaleOf(sheet.model, sheet.frame, sheet.layout));
  return place.paper().grown(7 * sheet.pen.unit());
}

void drawRod(OverlaySheet& sheet) {
  const RodScale scale = rodScaleOf(sheet.model, sheet.frame, sheet.layout);
  drawMarks(sheet, scale);
  drawGraduations(sheet.pen, sheet.layout.rod, scale);
  drawPointer(sheet, scale);
  nameMarkAt(sheet, scale);
}

}  // namespace viewer
