#include "viewer/overlays/overlay_sheet.h"

#include <algorithm>

#include <glm/common.hpp>
#include <glm/geometric.hpp>
#include <glm/vec4.hpp>

#include "viewer/overlays/caption_height.h"

namespace viewer {

std::optional<glm::vec2> OverlaySheet::onSheet(const glm::vec3& local) const {
  const auto at = frame.camera.project(local, aspect());
  if (!at) return std::nullopt;
  return glm::vec2(at->x * layout.sheet.width(), at->y * layout.sheet.height());
}

bool OverlaySheet::cutAway(const glm::vec3& local) const {
  return frame.section.on && glm::dot(frame.section.plane, glm::vec4(local, 1)) > 0;
}

bool OverlaySheet::hidden(const glm::vec3& local) const {
  if (!options.picker) return false;
  const auto at = frame.camera.project(local, aspect());
  if (!at) return true;
  const Ray ray = frame.camera.rayThrough({at->x, at->y}, aspect());
  // Points lie on faces of what they speak of: a hand's breadth is not hiding.
  constexpr float kHand = 0.12f;
  return options.picker->meetsBefore(ray, glm::dot(local - ray.from, ray.direction) - kHand, frame);
}

void OverlaySheet::spaceLine(const glm::vec3& a, const glm::vec3& b, unsigned rgb, float width,
                             int parts) const {
  for (int i = 0; i < parts; ++i) {
    const float s = float(i) / float(parts), t = float(i + 1) / float(parts);
    const auto from = onSheet(glm::mix(a, b, s)), to = onSheet(glm::mix(a, b, t));
    if (!from || !to) continue;
    const bool dim = hidden(glm::mix(a, b, (s + t) / 2));
    pen.line(*from, *to, rgb, dim ? width * 0.8f : width, dim ? 0.18f : 1.0f);
  }
}

namespace {

Box between(const Box& a, const Box& b, float share) {
  return {glm::mix(a.left, b.left, share), glm::mix(a.top, b.top, share),
          glm::mix(a.right, b.right, share), glm::mix(a.bottom, b.bottom, share)};
}

// True when a sheet and the column of levels together leave too little for the building.
bool crowded(float width, float height, float unit, float pulledOut, const SheetParts& parts) {
  constexpr float kUsefulWidth = 560;  // units
  const float whole = std::max(kSheetWidth * unit, pulledOut);
  const SheetLayout both = layOutSheet(width, height, unit, whole, parts);
  return both.drawing.width() < kUsefulWidth * unit;
}

}  // namespace

SheetLayout sheetOf(const model::Model& model, const Overlays& overlays, float width, float height,
                    float unit, float pulledOut, std::optional<size_t> stage) {
  SheetParts parts;
  parts.captions = overlays.captions;
  parts.titleBlock = overlays.titleBlock;
  parts.tape = overlays.tape;
  parts.rod = overlays.rod;
  parts.levels = overlays.levels;
  if (overlays.levels) {
    parts.heights = countHeights(model.settingOut.schedule, false);
    parts.withLifts = countHeights(model.settingOut.schedule, true);
  }
  parts.captionHeight = [&](float wide) {
    return stage && *stage < model.programme.stages.size()
               ? captionHeightOf(model, *stage, wide, unit)
               : tallestCaption(model, wide, unit);
  };
  SheetLayout with = layOutSheet(width, height, unit, pulledOut, parts);
  if (overlays.clientWords)
    with.drawing.bottom =
        std::max(with.drawing.top + 1, std::min(with.drawing.bottom, clientBox(with.sheet).top));
  if (!overlays.levels || pulledOut <= 0 || !crowded(width, height, unit, pulledOut, parts))
    return with;
  // The column goes, and the drawing takes its room while the sheet slides in.
  parts.levels = false;
  parts.heights = parts.withLifts = 0;
  SheetLayout without = layOutSheet(width, height, unit, pulledOut, parts);
  const float share = std::min(1.0f, pulledOut / (kSheetWidth * unit));
  without.drawing = between(with.drawing, without.drawing, share);
  without.levelsGiveWay = true;
  return without;
}

bool OverlaySheet::takenAt(const glm::vec2& at) const {
  return std::any_of(taken.begin(), taken.end(), [&](const Box& box) { return box.contains(at); });
}

void OverlaySheet::ask(const LabelRequest& request, const LabelText& text) {
  requests.push_back(request);
  texts.push_back(text);
}

}  // namespace viewer
