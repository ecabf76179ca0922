// Square corners by whole-number triangles; others by the distance across.
#include <algorithm>
#include <cmath>

#include <glm/trigonometric.hpp>

#include "model/lines/face_list.h"
#include "model/lines/tape_parts.h"

namespace model {

namespace {

constexpr double kUnit = 0.1;
constexpr double kBetter = 1.1;  // than 3-4-5 by as much, or it is not worth the odd numbers
constexpr std::array<std::array<int, 3>, 6> kRatios{
    {{3, 4, 5}, {5, 12, 13}, {8, 15, 17}, {7, 24, 25}, {20, 21, 29}, {12, 35, 37}}};

int wholeUnits(double length) { return static_cast<int>(std::floor(length / kUnit + 1e-6)); }

// How far the mark on one leg swings for each unit that the distance across is out, inverted: the
// bigger, the finer the check.
double fineness(const CornerTriangle& t) {
  return t.across > 0 ? t.before * t.after / t.across : 0;
}

void keepBetter(CornerTriangle& best, const std::array<int, 3>& ratio, bool longBefore, int before,
                int after, int tape) {
  const int first = longBefore ? ratio[1] : ratio[0], second = longBefore ? ratio[0] : ratio[1];
  const int times = std::min({before / first, after / second, tape / ratio[2]});
  if (times < 1) return;
  CornerTriangle t;
  t.before = times * first * kUnit;
  t.after = times * second * kUnit;
  t.across = times * ratio[2] * kUnit;
  t.ratio = ratio;
  const bool plainer = best.ratio[2] == ratio[2] || best.ratio[2] != 5;
  if (fineness(t) > fineness(best) * (plainer ? 1 + 1e-9 : kBetter)) best = t;
}

}  // namespace

CornerTriangle squareTriangle(double before, double after, double tape) {
  CornerTriangle best;
  for (const auto& ratio : kRatios) {
    for (const bool longBefore : {false, true})
      keepBetter(best, ratio, longBefore, wholeUnits(before), wholeUnits(after), wholeUnits(tape));
  }
  best.angle = 90;
  best.square = true;
  return best;
}

CornerTriangle cornerTriangle(const SettingOut& out, size_t corner, double tape) {
  const size_t n = out.corners.size();
  const double inside = glm::degrees(out.corners[corner].angle);
  const double angle = std::min(inside, 360 - inside);
  const double before = out.walls[(corner + n - 1) % n].length, after = out.walls[corner].length;
  CornerTriangle t;
  if (std::abs(angle - 90) <= kParallel) {
    t = squareTriangle(before, after, tape);
  } else if (180 - angle <= kParallel) {
    t.inLine = true;
  } else {
    t.before = wholeUnits(std::min(before, tape / 2)) * kUnit;
    t.after = wholeUnits(std::min(after, tape / 2)) * kUnit;
    t.across = std::sqrt(t.before * t.before + t.after * t.after -
                         2 * t.before * t.after * std::cos(glm::radians(angle)));
  }
  t.corner = corner;
  t.angle = angle;
  return t;
}

}  // namespace model
