#include "model/drawing/clear_space.h"

#include <algorithm>

#include <glm/geometric.hpp>

#include "model/works/plan_shapes.h"

namespace model {

namespace {

constexpr double kGap = 0.5;  // between words and anything else, mm

Polygon thin(const Vec2& a, const Vec2& b) {
  const double length = glm::length(b - a);
  if (length < 1e-9) return {};
  return rectangleOnPlan((a + b) / 2.0, (b - a) / length, length, 0.02);
}

}  // namespace

void ClearSpace::take(const Polygon& figure) { taken_.push_back(figure); }

void ClearSpace::takeLine(const Vec2& a, const Vec2& b) {
  if (Polygon line = thin(a, b); !line.empty()) lines_.push_back(std::move(line));
}

void ClearSpace::takeLines(const Polygon& closed) {
  for (size_t i = 0; i < closed.size(); ++i) takeLine(closed[i], closed[(i + 1) % closed.size()]);
}

bool ClearSpace::isFree(const Polygon& figure) const {
  for (const Vec2& p : figure)
    if (p.x < area_.low.x || p.x > area_.high.x || p.y < area_.low.y || p.y > area_.high.y)
      return false;
  return std::none_of(taken_.begin(), taken_.end(),
                      [&](const Polygon& other) { return overlapping(figure, other); });
}

bool ClearSpace::isFree(const Vec2& a, const Vec2& b) const {
  const Polygon line = thin(a, b);
  return line.empty() || isFree(line);
}

int ClearSpace::linesUnder(const Polygon& figure) const {
  return int(std::count_if(lines_.begin(), lines_.end(),
                           [&](const Polygon& line) { return overlapping(figure, line); }));
}

std::optional<Text> ClearSpace::place(const std::vector<Text>& candidates, const TextWidth& widthOf,
                                      int most) {
  const Text* best = nullptr;
  Polygon bestBox;
  int fewest = 0;
  for (const Text& text : candidates) {
    Polygon box = boxOf(text, widthOf, kGap);
    if (!isFree(box)) continue;
    const int lines = linesUnder(box);
    if (lines > most || (best && lines >= fewest)) continue;
    best = &text;
    bestBox = std::move(box);
    fewest = lines;
    if (lines == 0) break;
  }
  if (!best) return std::nullopt;
  take(bestBox);
  return *best;
}

}  // namespace model
