// Plans for drawn jobs: the shapes that small houses have, and some that they rarely do.
#pragma once

#include <algorithm>
#include <cmath>
#include <vector>

#include "model/geometry/polygon.h"
#include "model/job/job.h"
#include "tests/support/dice.h"

namespace test_support {

using model::Outline;
using model::Vec2;

// A plan and the wing of it that can have a cellar: a rectangle that shares three of its sides
// with the outline, or nothing.
struct Plan {
  Outline outline;
  Outline cellar;
};

inline Outline rectangle(double x0, double y0, double x1, double y1) {
  return {{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}};
}

inline Plan rectanglePlan(Dice& dice) {
  const double w = dice.length(3600, 13000), d = dice.length(3600, 9000);
  Plan plan{rectangle(0, 0, w, d), {}};
  if (w > 8) plan.cellar = rectangle(dice.length(2500, 4000), 0, w, d);
  return plan;
}

inline Plan planL(Dice& dice) {
  const double w = dice.length(8000, 13000), d = dice.length(8000, 12000);
  const double a = dice.length(3600, 4400), b = dice.length(3600, 4400);
  return {{{0, 0}, {w, 0}, {w, b}, {a, b}, {a, d}, {0, d}},
          rectangle(a + dice.length(900, 1500), 0, w, b)};
}

inline Plan planT(Dice& dice) {
  const double w = dice.length(10500, 14000), b = dice.length(3600, 5000);
  const double x0 = dice.length(3000, 3400), x1 = x0 + dice.length(3600, 4200);
  const double d = b + dice.length(2500, 5000);
  return {{{0, 0}, {w, 0}, {w, b}, {x1, b}, {x1, d}, {x0, d}, {x0, b}, {0, b}},
          rectangle(0, 0, x0 - 0.9, b)};
}

inline Plan planU(Dice& dice) {
  const double b = dice.length(3600, 4500), wing = dice.length(3600, 4200);
  const double w = 2 * wing + dice.length(3000, 5000);
  const double left = b + dice.length(2500, 5000);
  const double right = dice.chance(50) ? left : b + dice.length(2500, 5000);
  return {{{0, 0},
           {w, 0},
           {w, right},
           {w - wing, right},
           {w - wing, b},
           {wing, b},
           {wing, left},
           {0, left}},
          {}};
}

inline Plan planCross(Dice& dice) {
  const double arm = dice.length(3600, 4200), side = dice.length(2500, 4000);
  const double a = side, b = side + arm, c = 2 * side + arm;
  return {{{a, 0},
           {b, 0},
           {b, a},
           {c, a},
           {c, b},
           {b, b},
           {b, c},
           {a, c},
           {a, b},
           {0, b},
           {0, a},
           {a, a}},
          {}};
}

inline Plan planZ(Dice& dice) {
  const double w = dice.length(4000, 6000), d = dice.length(4000, 6000);
  const double shift = dice.length(2500, 3500), more = dice.length(3600, 5000);
  return {{{0, 0},
           {w, 0},
           {w, d - 1.5},
           {w + shift, d - 1.5},
           {w + shift, d + more},
           {shift, d + more},
           {shift, d},
           {0, d}},
          {}};
}

inline Plan planInLine(Dice& dice) {
  const double w = dice.length(7000, 12000), d = dice.length(4000, 7000);
  return {{{0, 0}, {dice.length(3000, 4000), 0}, {w, 0}, {w, d}, {0, d}}, {}};
}

inline Plan planSkew(Dice& dice) {
  const double w = dice.length(5000, 9000), d = dice.length(4000, 7000);
  return {{{0, 0},
           {w, dice.length(-600, 600)},
           {w + dice.length(-900, 900), d},
           {dice.length(-500, 500), d + dice.length(-500, 500)}},
          {}};
}

inline double cornerAngle(const Outline& outline, size_t i) {
  const size_t n = outline.size();
  const Vec2 in = outline[i] - outline[(i + n - 1) % n], out = outline[(i + 1) % n] - outline[i];
  const double turn = std::atan2(in.x * out.y - in.y * out.x, in.x * out.x + in.y * out.y);
  return 180 - turn * 180 / 3.14159265358979323846;
}

inline double edgeLength(const Outline& outline, size_t i) {
  const Vec2 edge = outline[(i + 1) % outline.size()] - outline[i];
  return std::hypot(edge.x, edge.y);
}

inline Plan irregularPlan(Dice& dice) {
  for (int tries = 0; tries < 200; ++tries) {
    const int n = dice.between(4, 8);
    Outline outline;
    for (int i = 0; i < n; ++i) {
      const double turn = 2 * 3.14159265358979323846 * (i + dice.real(-0.25, 0.25)) / n;
      const double reach = dice.real(4, 8);
      outline.push_back({std::round(reach * std::cos(turn) * 200) / 200,
                         std::round(reach * std::sin(turn) * 200) / 200});
    }
    bool good = true;
    for (size_t i = 0; i < outline.size(); ++i) {
      const double angle = cornerAngle(outline, i);
      good = good && angle > 60 && angle < 280 && edgeLength(outline, i) > 2.8;
    }
    if (good && model::signedArea(outline) > 12) return {outline, {}};
  }
  return planSkew(dice);
}

inline Vec2 turned(const Vec2& p, double angle) {
  return {p.x * std::cos(angle) - p.y * std::sin(angle),
          p.x * std::sin(angle) + p.y * std::cos(angle)};
}

inline Plan drawPlan(Dice& dice, unsigned seed) {
  using Maker = Plan (*)(Dice&);
  static const std::vector<Maker> makers{
      rectanglePlan, planL, planT, planU, planCross, planZ, planInLine, planSkew, irregularPlan};
  Plan plan = makers[seed % makers.size()](dice);
  if (dice.chance(25)) {
    const double angle = dice.between(1, 359) * 3.14159265358979323846 / 180;
    for (Vec2& p : plan.outline) p = turned(p, angle);
    for (Vec2& p : plan.cellar) p = turned(p, angle);
  }
  const int first = dice.between(0, static_cast<int>(plan.outline.size()) - 1);
  std::rotate(plan.outline.begin(), plan.outline.begin() + first, plan.outline.end());
  if (dice.chance(25)) std::reverse(plan.outline.begin(), plan.outline.end());
  if (dice.chance(25)) std::reverse(plan.cellar.begin(), plan.cellar.end());
  return plan;
}

}  // namespace test_support
