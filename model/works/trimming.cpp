#include "model/works/trimming.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

namespace model {
namespace {

constexpr double kTolerance = 1e-6;
constexpr double kLeastPart = 0.6;  // of a joist's width, to be worth laying
constexpr double kFar = 1000;

}  // namespace

Span spanAlong(const Polygon& polygon, const Vec2& direction) {
  Span span;
  for (const Vec2& p : polygon) {
    span.low = std::min(span.low, glm::dot(p, direction));
    span.high = std::max(span.high, glm::dot(p, direction));
  }
  return span;
}

Polygon boxOnPlan(const Vec2& u, const Vec2& v, const Span& along, const Span& square) {
  const auto at = [&](double a, double b) { return u * a + v * b; };
  return {at(along.low, square.low), at(along.high, square.low), at(along.high, square.high),
          at(along.low, square.high)};
}

Trimming::Trimming(const UpperFloor& floor, const Polygon& area, const Polygon& well, const Vec2& u,
                   const Vec2& v, int thick)
    : u_(u), v_(v) {
  const double width = floor.joistWidth;
  thick_ = thick * width;
  across_ = spanAlong(well, u);
  along_ = spanAlong(well, v);
  const Regions inside{{area, {}}};
  for (const double side : {-1.0, 1.0}) {
    for (int i = 0; i < thick; ++i) {
      const double near = side < 0 ? across_.low - (i + 1) * width : across_.high + i * width;
      for (const Region& piece :
           intersect({{boxOnPlan(u, v, {near, near + width}, {-kFar, kFar}), {}}}, inside)) {
        const Span length = spanAlong(piece.outer, v);
        // Beyond a wall that the well lies along there is none beside it.
        if (length.low > along_.high - kTolerance || length.high < along_.low + kTolerance)
          continue;
        if (model::area(piece) < kLeastPart * width * (length.high - length.low)) continue;
        joists.push_back({piece});
        beside_.push_back({{near, near + width}, length});
      }
    }
    for (int i = 0; i < thick; ++i) {
      const double near = side < 0 ? along_.low - (i + 1) * width : along_.high + i * width;
      const Regions pieces =
          intersect({{boxOnPlan(u, v, across_, {near, near + width}), {}}}, inside);
      for (const Region& piece : pieces) {
        const Span length = spanAlong(piece.outer, u);
        if (model::area(piece) >= kLeastPart * width * (length.high - length.low))
          trimmers.push_back({piece});
      }
    }
  }
}

Regions Trimming::without(const Regions& joist, double line, double width) const {
  const Span own{line - width / 2, line + width / 2};
  const auto meets = [&](const Span& other) {
    return own.low < other.high - kTolerance && own.high > other.low + kTolerance;
  };
  const Span wide{own.low - width, own.high + width};
  Regions left = joist;
  for (const Beside& timber : beside_)
    if (meets(timber.across)) left = subtract(left, {{boxOnPlan(u_, v_, wide, timber.length), {}}});
  if (meets(across_))
    left = subtract(left,
                    {{boxOnPlan(u_, v_, wide, {along_.low - thick_, along_.high + thick_}), {}}});
  return left;
}

std::vector<double> Trimming::between(const std::vector<double>& lines,
                                      const UpperFloor& floor) const {
  const double width = floor.joistWidth;
  std::vector<double> more;
  if (beside_.empty()) return more;
  Span outer;
  for (const Beside& timber : beside_) {
    outer.low = std::min(outer.low, timber.across.low);
    outer.high = std::max(outer.high, timber.across.high);
  }
  double before = -kFar, after = kFar;
  for (const double line : lines) {
    if (line + width / 2 <= outer.low + kTolerance) before = std::max(before, line);
    if (line - width / 2 >= outer.high - kTolerance) after = std::min(after, line);
  }
  const double low = outer.low + width / 2, high = outer.high - width / 2;
  const auto fill = [&](double a, double b) {
    if (b - a < kFar / 2 && b - a > floor.spacing + kTolerance && b - a >= 2 * width)
      more.push_back((a + b) / 2);
  };
  if (outer.low < across_.low) fill(before, low);
  if (outer.high > across_.high) fill(high, after);
  return more;
}

}  // namespace model
