#include "model/drawing/sheet.h"

#include <array>
#include <cmath>

#include <glm/geometric.hpp>

namespace model {

const char* nameOf(Layer layer) {
  static constexpr std::array<const char*, size_t(Layer::Count)> kNames{
      "site",        "boundary", "limits",   "buildings", "outline", "faces",
      "foundations", "cellar",   "profiles", "strings",   "corners", "diagonals",
      "dimensions",  "levels",   "text",     "tables",    "frame"};
  return kNames[size_t(layer)];
}

std::vector<double> dashesOf(const Pen& pen) {
  const double d = pen.width;
  switch (pen.type) {
    case LineType::Dashed:
      return {12 * d, 3 * d};
    case LineType::Chain:
      return {24 * d, 3 * d, 0.5 * d, 3 * d};
    case LineType::Continuous:
      break;
  }
  return {};
}

void Sheet::line(Layer layer, const Pen& pen, const Vec2& a, const Vec2& b) {
  strokes.push_back({layer, pen, {a, b}, false});
}

Area fitted(const Jpeg& jpeg, const Area& area) {
  if (jpeg.width <= 0 || jpeg.height <= 0) return area;
  const double scale = std::min(area.width() / jpeg.width, area.height() / jpeg.height);
  const Vec2 half = Vec2{jpeg.width * scale, jpeg.height * scale} / 2.0;
  const Vec2 middle = (area.low + area.high) / 2.0;
  return {middle - half, middle + half};
}

void Sheet::outline(Layer layer, const Pen& pen, const Polygon& polygon) {
  if (polygon.size() > 1) strokes.push_back({layer, pen, polygon, true});
}

namespace {

// The part of a segment inside an area as fractions of it; from > to when there is none. (Liang
// and Barsky's way: each side cuts a piece off.)
std::array<double, 2> inside(const Vec2& a, const Vec2& b, const Area& area) {
  std::array<double, 2> part{0, 1};
  for (int axis = 0; axis < 2; ++axis) {
    const double d = b[axis] - a[axis];
    const std::array<double, 2> sides{area.low[axis], area.high[axis]};
    if (d == 0) {
      if (a[axis] < sides[0] || a[axis] > sides[1]) return {1, 0};
      continue;
    }
    double in = (sides[0] - a[axis]) / d, out = (sides[1] - a[axis]) / d;
    if (in > out) std::swap(in, out);
    part = {std::max(part[0], in), std::min(part[1], out)};
  }
  return part;
}

}  // namespace

std::vector<Stroke> clipped(const Stroke& stroke, const Area& area) {
  const auto holdsAll = [&] {
    for (const Vec2& p : stroke.points)
      if (p.x < area.low.x || p.x > area.high.x || p.y < area.low.y || p.y > area.high.y)
        return false;
    return true;
  };
  if (holdsAll()) return {stroke};
  std::vector<Stroke> pieces;
  const auto& points = stroke.points;
  const size_t segments = stroke.closed ? points.size() : points.size() - 1;
  bool open = false;  // the last piece ends at the start of this segment
  for (size_t i = 0; i < segments; ++i) {
    const Vec2 a = points[i], b = points[(i + 1) % points.size()];
    const auto [from, to] = inside(a, b, area);
    if (from >= to) {
      open = false;
      continue;
    }
    if (!open || from > 0)
      pieces.push_back({stroke.layer, stroke.pen, {a + (b - a) * from}, false});
    pieces.back().points.push_back(to < 1 ? a + (b - a) * to : b);
    open = to >= 1;
  }
  return pieces;
}

Vec2 startOf(const Text& text, double width) {
  const double left = text.across == Across::Left     ? 0
                      : text.across == Across::Centre ? -width / 2
                                                      : -width;
  const double base = text.up == Up::Baseline ? 0
                      : text.up == Up::Middle ? -text.size / 2
                                              : -text.size;
  return {left, base};
}

Polygon boxOf(const Text& text, const TextWidth& widthOf, double gap) {
  // Scripts with marks above and below reach about this far.
  constexpr double kBelow = 0.35, kAbove = 1.25;
  const double width = widthOf(text.text, text.size, text.bold);
  const Vec2 start = startOf(text, width);
  const double angle = text.angle * 3.14159265358979323846 / 180;
  const Vec2 u{std::cos(angle), std::sin(angle)}, v{-u.y, u.x};
  const auto at = [&](double x, double y) { return text.at + u * x + v * y; };
  const double low = start.y - kBelow * text.size - gap, high = start.y + kAbove * text.size + gap;
  return {at(start.x - gap, low), at(start.x + width + gap, low), at(start.x + width + gap, high),
          at(start.x - gap, high)};
}

}  // namespace model
