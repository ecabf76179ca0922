// Wall lengths as dimension lines outside the walls, and the shortest lines to what stands round.
#include <cmath>

#include <glm/geometric.hpp>

#include "model/level_text.h"
#include "model/settingout/offsets.h"
#include "viewer/overlays/overlay_sheet.h"

namespace viewer {
namespace {

constexpr double kFirstLine = 1.55;  // metres from the wall to its dimension line
constexpr float kShortest = 34;      // units; shorter lines on the sheet carry no text

// An oblique stroke through the end of a dimension line.
void stroke(const Pen& pen, const glm::vec2& at, const glm::vec2& along, unsigned rgb,
            float opacity) {
  const glm::vec2 slant = glm::normalize(along + glm::vec2(along.y, -along.x)) * 6.0f * pen.unit();
  pen.line(at - slant, at + slant, rgb, 1.8f, opacity);
}

void dimensionLine(OverlaySheet& sheet, const glm::vec3& a, const glm::vec3& b,
                   const glm::vec3& outward, const std::string& text, unsigned rgb, int priority) {
  const auto from = sheet.onSheet(a), to = sheet.onSheet(b);
  if (!from || !to) return;
  const float length = glm::distance(*from, *to);
  if (length < kShortest * sheet.pen.unit()) return;
  const glm::vec3 middle = (a + b) * 0.5f;
  const float opacity = sheet.hidden(middle) ? 0.25f : 1.0f;
  sheet.pen.line(*from, *to, rgb, 1.2f, opacity);
  const glm::vec2 along = (*to - *from) / length;
  stroke(sheet.pen, *from, along, rgb, opacity);
  stroke(sheet.pen, *to, along, rgb, opacity);
  glm::vec2 side{along.y, -along.x};
  if (const auto outside = sheet.onSheet(middle + outward))
    if (glm::dot(side, *outside - (*from + *to) * 0.5f) < 0) side = -side;
  LabelRequest request;
  request.anchor = (*from + *to) * 0.5f;
  request.size = sheet.pen.size(text);
  request.towards = glm::length(outward) > 0 ? side : glm::vec2(0);
  request.priority = priority;
  // What lies behind walls is not written over them; plans and other sides say it.
  if (opacity < 1) return;
  sheet.ask(request, {text, rgb, 1, true, Cut::Text});
}

void wallLength(OverlaySheet& sheet, const model::WallLine& wall, double level) {
  const auto at = [&](const model::Vec2& p, double off) {
    return sheet.scene.local({p + wall.outward * off, level});
  };
  const auto extension = [&](const model::Vec2& p) {
    const auto from = sheet.onSheet(at(p, 0.2)), to = sheet.onSheet(at(p, kFirstLine + 0.15));
    if (from && to) sheet.pen.line(*from, *to, ink::kInk, 1, 0.4f);
  };
  // Seen end on, or from behind in an elevation, it would only lie over another one.
  const auto a = sheet.onSheet(at(wall.start, kFirstLine));
  const auto b = sheet.onSheet(at(wall.end, kFirstLine));
  if (!a || !b || glm::distance(*a, *b) < kShortest * sheet.pen.unit()) return;
  extension(wall.start);
  extension(wall.end);
  dimensionLine(sheet, at(wall.start, kFirstLine), at(wall.end, kFirstLine),
                glm::vec3(glm::vec2(wall.outward), 0) * 0.5f, model::lengthText(wall.length),
                ink::kInk, 3);
}

bool behindInElevation(const Camera& camera, const model::WallLine& wall) {
  if (!camera.parallel || std::abs(camera.elevation) > 0.05) return false;
  const glm::dvec2 looking{std::sin(camera.azimuth), std::cos(camera.azimuth)};
  return glm::dot(looking, wall.outward) > -0.2;
}

}  // namespace

void drawDimensions(OverlaySheet& sheet) {
  const model::SettingOut& out = sheet.model.settingOut;
  const double level = out.levels.groundHigh + 0.05;
  for (const model::WallLine& wall : out.walls)
    if (!behindInElevation(sheet.frame.camera, wall)) wallLength(sheet, wall, level);
  if (std::abs(sheet.frame.camera.elevation) < 0.05) return;  // they would lie over the lengths
  for (const model::SiteOffset& offset : model::deriveOffsets(sheet.model.job, out)) {
    if (offset.distance < 0.001) continue;
    dimensionLine(sheet, sheet.scene.local({offset.from, level}),
                  sheet.scene.local({offset.at, level}), glm::vec3(0),
                  model::lengthText(offset.distance), ink::kSoft, 2);
  }
}

}  // namespace viewer
