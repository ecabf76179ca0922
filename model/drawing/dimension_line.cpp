#include "model/drawing/dimension_line.h"

#include <cmath>

#include <glm/geometric.hpp>

#include "model/works/plan_shapes.h"

namespace model {

namespace {

constexpr double kTick = 1.2;      // half of a tick, along and across
constexpr double kOverLine = 0.9;  // from the line to the figure's foot
constexpr double kFootGap = 1.0;   // from what is measured to its extension line
constexpr double kPast = 1.5;      // extension lines go on past the line
const Pen kThin{kPen013, LineType::Continuous};
const Pen kTickPen{kPen035, LineType::Continuous};

void extension(Sheet& sheet, ClearSpace& space, const Vec2& foot, const Vec2& end) {
  const double length = glm::length(end - foot);
  if (length < kFootGap) return;
  const Vec2 u = (end - foot) / length;
  sheet.line(Layer::Dimensions, kThin, foot + u * kFootGap, end + u * kPast);
  space.takeLine(foot + u * kFootGap, end + u * kPast);
}

// Places for the figure, best first.
std::vector<Text> placesOf(const DimensionLine& line, double width) {
  const double length = glm::length(line.to - line.from);
  Vec2 u = (line.to - line.from) / length;
  Text text;
  text.layer = Layer::Dimensions;
  text.text = line.figure;
  text.size = line.size;
  text.across = Across::Centre;
  text.angle = readingAngle(u);
  text.halo = true;
  const double angle = text.angle * 3.14159265358979323846 / 180;
  u = {std::cos(angle), std::sin(angle)};
  const Vec2 up{-u.y, u.x}, middle = (line.from + line.to) / 2.0;
  const double step = 1.9 * line.size, below = -kOverLine - line.size * 1.25;
  std::vector<Text> places;
  const auto add = [&](double along, double above) {
    text.at = middle + u * along + up * above;
    places.push_back(text);
  };
  if (width + 1 <= length) {
    for (const double side : {kOverLine, below})
      for (const double part : {0.0, 0.25, -0.25, 0.5, -0.5, 0.75, -0.75, 1.0, -1.0})
        add(part * (length - width - 1) / 2, side);
  } else {
    add(0, kOverLine + 0.6);
    add(0, below - 0.6);
  }
  for (int row = 1; row <= 4; ++row)
    for (const double along : {0.0, width / 2, -width / 2}) {
      add(along, kOverLine + row * step);
      add(along, below - row * step);
    }
  const double beyond = (length + width) / 2 + 1.5 * kTick + 1;
  add(beyond, kOverLine);
  add(-beyond, kOverLine);
  return places;
}

// From the line's middle to a figure that stands away from it.
void leader(Sheet& sheet, ClearSpace& space, const DimensionLine& line, const Text& text) {
  const Vec2 middle = (line.from + line.to) / 2.0;
  const double angle = text.angle * 3.14159265358979323846 / 180;
  const Vec2 u{std::cos(angle), std::sin(angle)}, up{-u.y, u.x};
  const double above = glm::dot(text.at - middle, up);
  if (above > -4 * text.size && above < 2 * text.size) return;
  const Vec2 end = above > 0 ? text.at - up * 0.6 : text.at + up * (1.3 * text.size);
  sheet.line(Layer::Dimensions, kThin, middle, end);
  space.takeLine(middle, end);
}

}  // namespace

double readingAngle(const Vec2& along) {
  double angle = std::atan2(along.y, along.x) * 180 / 3.14159265358979323846;
  // What is nearly upright reads from the right, whichever way it leans.
  constexpr double kNearlyUpright = 15;
  if (angle > 90 + kNearlyUpright) angle -= 180;
  if (angle <= -90 + kNearlyUpright) angle += 180;
  return angle;
}

bool drawDimension(Sheet& sheet, ClearSpace& space, const DimensionLine& line,
                   const TextWidth& widthOf) {
  const double length = glm::length(line.to - line.from);
  if (length < 1e-6) return false;
  const double width = widthOf(line.figure, line.size, false);
  const auto text = space.place(placesOf(line, width), widthOf);
  if (!text) return false;
  extension(sheet, space, line.fromFoot, line.from);
  extension(sheet, space, line.toFoot, line.to);
  sheet.line(Layer::Dimensions, kThin, line.from, line.to);
  space.takeLine(line.from, line.to);
  const Vec2 u = (line.to - line.from) / length, slant = u + Vec2{-u.y, u.x};
  for (const Vec2& end : {line.from, line.to}) {
    sheet.line(Layer::Dimensions, kTickPen, end - slant * kTick, end + slant * kTick);
    space.take(rectangleOnPlan(end, u, 1.5 * kTick, 1.5 * kTick));
  }
  leader(sheet, space, line, *text);
  sheet.texts.push_back(*text);
  return true;
}

}  // namespace model
