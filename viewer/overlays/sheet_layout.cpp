#include "viewer/overlays/sheet_layout.h"

#include <algorithm>

namespace viewer {
namespace {

constexpr float kMargin = 22;
constexpr float kOverTape = 46;  // hook, diamonds, date and scale bar
constexpr float kLeader = 58;    // between drawing and levels
constexpr float kLeaderLeft = 46;
constexpr float kLeastDrawing = 200;  // that a second column of levels must leave

void layOutRight(SheetLayout& s, float u, const SheetParts& parts) {
  const float width = s.sheet.width(), height = s.sheet.height(), margin = kMargin * u;
  // On a narrow sheet the pointer's words go on a card beside the rod instead of past it.
  const float past = width >= 1400 * u ? 86 * u : 24 * u;
  const float rodRight = width - margin - past;
  s.rod = {rodRight - 30 * u, margin + 12 * u, rodRight, height - margin};
  const float right = parts.rod ? s.rod.left - 36 * u : width - margin;
  const float strip = std::clamp(width * 0.28f, 236 * u, 362 * u);
  const float block = std::clamp(height * 0.19f, 105 * u, 150 * u);
  s.titleBlock = {right - strip, height - margin - block, right, height - margin};
  const float foot = parts.titleBlock ? s.titleBlock.top - 10 * u : height - margin;
  s.levels = {parts.levels ? right - strip : right, margin, right, foot};
}

void layOutBottom(SheetLayout& s, float u, const SheetParts& parts) {
  const float height = s.sheet.height(), margin = kMargin * u;
  const float tall = std::clamp(height * 0.12f, 60 * u, 66 * u);
  const bool beside = parts.titleBlock || parts.levels;
  const float right = beside ? s.titleBlock.left - 30 * u : s.titleBlock.right;
  s.tape = {margin + 20 * u, height - margin - tall, right, height - margin};
  s.tabs = {0, margin, 32 * u, s.tape.top - 26 * u};
}

void layOutCaptions(SheetLayout& s, float u, float pulledOut, const SheetParts& parts) {
  const float left = (kMargin + 20) * u + pulledOut;
  const float end = s.levels.left - (parts.levels ? 56 * u : 0);
  s.captions = {left, kMargin * u, std::max(left, std::min(end, left + 780 * u)),
                s.sheet.height() * 0.42f};
}

float captionFoot(const SheetLayout& s, float u, const SheetParts& parts) {
  if (!parts.captions) return kMargin * u;
  const float wanted = parts.captionHeight ? parts.captionHeight(s.captions.width()) : 84 * u;
  return std::min(s.captions.top + wanted, s.captions.bottom);
}

}  // namespace

SheetLayout layOutSheet(float width, float height, float unit, float pulledOut,
                        const SheetParts& parts) {
  const float u = unit;
  SheetLayout s;
  s.sheet = {0, 0, width, height};
  layOutRight(s, u, parts);
  layOutBottom(s, u, parts);
  layOutCaptions(s, u, pulledOut, parts);
  const float right = s.levels.left - (parts.levels ? kLeader * u : 0);
  float foot = height - kMargin * u;
  // With one of the two the building stands where it would with both.
  if (parts.tape || parts.titleBlock)
    foot = parts.levels ? s.tape.top - kOverTape * u : s.titleBlock.top - 12 * u;
  const float left = (kMargin + 20) * u + pulledOut;
  s.drawing = {left, captionFoot(s, u, parts) + 10 * u, right, foot};
  s.drawing.right = std::max(s.drawing.right, s.drawing.left + 40 * u);
  s.drawing.bottom = std::max(s.drawing.bottom, s.drawing.top + 40 * u);
  // A second column of levels, where the first would be too small to read.
  const float second = std::min(s.levels.width(), s.drawing.width() * 0.38f);
  const bool room =
      parts.levels && s.drawing.width() - second - kLeaderLeft * u >= kLeastDrawing * u;
  s.levelsLeft = {s.drawing.left, s.drawing.top, s.drawing.left, s.drawing.bottom};
  s.lifts = parts.levels && fitWithEase(parts.withLifts, s.levels.height(), u);
  s.levelPlan = planLevels(s.lifts ? std::max(parts.heights, parts.withLifts) : parts.heights,
                           s.levels.height(), room ? s.drawing.height() : 0, u);
  if (s.levelPlan.left > 0) {
    s.levelsLeft.right = s.levelsLeft.left + second;
    s.drawing.left = s.levelsLeft.right + kLeaderLeft * u;
  }
  return s;
}

}  // namespace viewer
