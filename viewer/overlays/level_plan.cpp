#include "viewer/overlays/level_plan.h"

#include <algorithm>
#include <cmath>

namespace viewer {
namespace {

constexpr float kFull = 16, kGood = 14, kLeast = 11;  // units
constexpr float kLeastPixels = 10.5f;
constexpr float kStep = 0.25f;

}  // namespace

size_t levelLines(float height, float text) {
  const float lines = std::floor(height / (text * kLevelLine) + 1e-3f) - 1;
  return lines > 0 ? size_t(lines) : 0;
}

bool fitWithEase(size_t count, float height, float unit) {
  return levelLines(height, kGood * unit) >= count;
}

LevelPlan planLevels(size_t count, float rightHeight, float leftHeight, float unit) {
  LevelPlan plan;
  plan.right = count;
  const float least = std::max(kLeast * unit, std::min(kLeastPixels, kFull * unit));
  const auto tryText = [&](float text, bool both, size_t perLine) {
    const size_t right = levelLines(rightHeight, text) * perLine;
    const size_t left = both ? levelLines(leftHeight, text) * perLine : 0;
    if (right + left < count || right == 0) return false;
    // Shared in the proportion of the room there is.
    const size_t share =
        left ? size_t(std::ceil(double(count) * double(right) / double(right + left))) : count;
    plan.right = std::clamp(share, count > left ? count - left : size_t(0), std::min(right, count));
    plan.left = count - plan.right;
    plan.perLine = perLine;
    plan.text = text;
    return true;
  };
  const bool second = leftHeight > 0;
  for (float text = kFull * unit; text >= kGood * unit - 1e-3f; text -= kStep * unit)
    if (tryText(text, false, 1)) return plan;
  for (float text = kFull * unit; text >= least - 1e-3f; text -= kStep * unit)
    if (tryText(text, second, 1)) return plan;
  for (size_t perLine = 2; perLine <= std::max<size_t>(2, count); ++perLine)
    if (tryText(least, second, perLine)) return plan;
  // Not even one line fits: a sheet of a few pixels.
  plan.text = std::max(1.0f, std::min(least, rightHeight / (2.2f * kLevelLine)));
  plan.perLine = std::max<size_t>(1, count);
  return plan;
}

}  // namespace viewer
