// Draws the rod: graduations, the scheduled levels, and the pointer of the level plane.
#include <algorithm>
#include <cmath>
#include <cstdio>

#include "model/level_text.h"
#include "viewer/overlays/overlay_sheet.h"
#include "viewer/overlays/words.h"

namespace viewer {
namespace {

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
  }
  pen.outline(rod, ink::kInk, 1.5f);
}

void drawLabel(const Pen& pen, const Box& rod, const RodMark& mark, const RodLabel& label) {
  const float u = pen.unit(), right = rod.left - 34 * u;
  const float strength = mark.priority == 2 ? 1 : 0.55f;
  const std::string value = model::levelText(mark.level);
  const std::string name = pen.shortened(mark.name, 176 * u);
  const float valueWidth = pen.size(value, Cut::Bold).x;
  const float top = label.y - pen.lineHeight() * 0.5f;
  pen.haloText({right - valueWidth - 8 * u - pen.size(name).x, top}, ink::kSoft, name);
  pen.haloText({right - valueWidth, top}, ink::kInk, value, Cut::Bold);
  // The leader steps aside with the number.
  pen.line({right + 4 * u, label.y}, {right + 12 * u, label.y}, ink::kInk, 1, strength);
  pen.line({right + 12 * u, label.y}, {rod.left - 8 * u, label.trueY}, ink::kInk, 1, strength);
}

void drawLabels(OverlaySheet& sheet, const RodScale& scale) {
  const Pen& pen = sheet.pen;
  const float u = pen.unit();
  const Box& rod = sheet.layout.rod;
  auto marks = rodMarks(sheet.model.settingOut.schedule);
  // Sills and heads are for elevations, where they stand beside their openings.
  if (!isElevation(sheet.frame.camera))
    std::erase_if(marks, [](const RodMark& mark) { return mark.priority == 0; });
  // Every level has its mark, at its own height to the pixel; texts as many as there is room for.
  for (const RodMark& mark : marks) {
    const float y = scale.yAt(mark.level);
    if (y < rod.top || y > rod.bottom) continue;
    const bool main = mark.priority == 2;
    pen.line({rod.left - 8 * u, y}, {rod.left, y}, ink::kInk, main ? 1.5f : 1, main ? 1 : 0.7f);
  }
  if (sheet.levelsShown) return;
  for (const RodLabel& label :
       layOutRod(marks, scale, rod, pen.lineHeight() * 1.18f, sheet.rodTextsTo))
    drawLabel(pen, rod, marks[label.mark], label);
}

std::vector<std::string> pointerWords(const OverlaySheet& sheet, double level) {
  std::vector<std::string> words{model::levelText(level), courseWords(sheet.model, level)};
  const auto& mark = sheet.model.job.site.benchMark;
  if (!mark) return words;
  char text[40];
  if (sheet.options.staffOnBenchMark)
    std::snprintf(text, sizeof text, "staff %.3f",
                  mark->level + *sheet.options.staffOnBenchMark - level);
  else
    std::snprintf(text, sizeof text, "BM %s", model::levelText(level - mark->level).c_str());
  words.emplace_back(text);
  return words;
}

void drawPointer(OverlaySheet& sheet, const RodScale& scale) {
  const Pen& pen = sheet.pen;
  const float u = pen.unit();
  const Box& rod = sheet.layout.rod;
  const double level = double(sheet.frame.levelPlaneAt);
  const float y = std::clamp(scale.yAt(level), rod.top, rod.bottom);
  const float opacity = sheet.frame.levelPlane ? 1.0f : 0.45f;
  const ImU32 blue = colour(ink::kLevels, opacity);
  pen.list()->AddTriangleFilled({rod.right - u, y}, {rod.right + 13 * u, y - 8 * u},
                                {rod.right + 13 * u, y + 8 * u}, blue);
  if (!sheet.frame.levelPlane) return;
  pen.line({rod.left, y}, {rod.right, y}, ink::kLevels, 2);
  const auto words = pointerWords(sheet, level);
  const float line = pen.lineHeight() * 1.1f;
  float top = std::clamp(y - line * 0.5f, rod.top, rod.bottom - line * float(words.size()));
  for (size_t i = 0; i < words.size(); ++i, top += line)
    pen.text({rod.right + 17 * u, top}, ink::kLevels, words[i], i ? Cut::Text : Cut::Bold);
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

void drawRod(OverlaySheet& sheet) {
  const RodScale scale = rodScaleOf(sheet.model, sheet.frame, sheet.layout);
  drawLabels(sheet, scale);
  drawGraduations(sheet.pen, sheet.layout.rod, scale);
  drawPointer(sheet, scale);
}

}  // namespace viewer
