// What texts keep clear of: lines, in small pieces, and standing buildings, in bands.
#include <algorithm>

#include <glm/common.hpp>
#include <glm/geometric.hpp>

#include "viewer/overlays/overlay_sheet.h"

namespace viewer {
namespace {

// The points' hull, cut into level bands: exact enough for texts, whatever its shape and turn.
void addBands(const std::vector<glm::vec2>& points, float band, const Box& sheet,
              std::vector<Box>& bands) {
  float top = 1e9f, bottom = -1e9f;
  for (const glm::vec2& p : points) top = std::min(top, p.y), bottom = std::max(bottom, p.y);
  top = std::max(top, sheet.top);
  bottom = std::min(bottom, sheet.bottom);
  for (float y = top; y < bottom; y += band) {
    const float middle = std::min(y + band / 2, (y + bottom) / 2);
    Box box{1e9f, y, -1e9f, std::min(y + band, bottom)};
    for (const glm::vec2& a : points)
      for (const glm::vec2& b : points) {
        if (a.y > middle || b.y <= middle) continue;
        const float x = a.x + (b.x - a.x) * (middle - a.y) / (b.y - a.y);
        box.left = std::min(box.left, x);
        box.right = std::max(box.right, x);
      }
    box.left = std::max(box.left, sheet.left);
    box.right = std::min(box.right, sheet.right);
    if (box.left < box.right) bands.push_back(box);
  }
}

}  // namespace

void OverlaySheet::keepClear(const glm::vec2& from, const glm::vec2& to) {
  const float piece = 3 * pen.unit();
  const Box seen = layout.sheet.grown(piece);
  const int count = std::clamp(int(glm::distance(from, to) / piece), 1, 2000);
  for (int i = 0; i < count; ++i) {
    const glm::vec2 a = glm::mix(from, to, float(i) / float(count));
    const glm::vec2 b = glm::mix(from, to, float(i + 1) / float(count));
    if (!seen.contains(a) || !seen.contains(b)) continue;
    lines.push_back(
        {std::min(a.x, b.x), std::min(a.y, b.y), std::max(a.x, b.x), std::max(a.y, b.y)});
  }
}

std::vector<Box> standingBuildings(const OverlaySheet& sheet) {
  constexpr float kBand = 8;  // units
  std::vector<Box> bands;
  const auto& elements = sheet.model.works.elements;
  for (size_t i = 0; i < elements.size(); ++i) {
    if (elements[i].kind != model::ElementKind::StandingBuilding) continue;
    if (double(sheet.scene.elements[i].goes) <= sheet.frame.time) continue;
    std::vector<glm::vec2> points;
    for (const model::Vec3& p : elements[i].solid.points)
      if (const auto at = sheet.onSheet(sheet.scene.local(p))) points.push_back(*at);
    addBands(points, kBand * sheet.pen.unit(), sheet.layout.sheet, bands);
  }
  return bands;
}

}  // namespace viewer
