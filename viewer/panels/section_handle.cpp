#include "viewer/panels/section_handle.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "viewer/overlays/pen.h"

namespace viewer {
namespace {

glm::vec3 handlePoint(const Scene& scene, const Section& section) {
  const glm::vec3 normal{section.plane};
  glm::vec3 p = (scene.buildingLow + scene.buildingHigh) * 0.5f;
  p.z = scene.buildingHigh.z + 0.5f;
  return p - normal * (glm::dot(normal, p) + section.plane.w);
}

std::optional<glm::vec2> onSheet(const Frame& frame, const SheetLayout& layout,
                                 const glm::vec3& p) {
  const Box& s = layout.sheet;
  const auto at = frame.camera.project(p, double(s.width() / s.height()));
  if (!at) return std::nullopt;
  return glm::vec2(at->x * s.width(), at->y * s.height());
}

// Pixels that the handle moves when the plane moves one metre along its normal.
std::optional<glm::vec2> perMetre(const Scene& scene, const Frame& frame,
                                  const SheetLayout& layout) {
  const glm::vec3 p = handlePoint(scene, frame.section);
  const auto here = onSheet(frame, layout, p);
  const auto there = onSheet(frame, layout, p + glm::vec3(frame.section.plane));
  if (!here || !there) return std::nullopt;
  return *there - *here;
}

}  // namespace

std::optional<glm::vec2> sectionHandle(const Scene& scene, const Frame& frame,
                                       const SheetLayout& layout) {
  if (!frame.section.on) return std::nullopt;
  const auto at = onSheet(frame, layout, handlePoint(scene, frame.section));
  if (!at) return std::nullopt;
  // Always within reach, however near the camera is.
  const Box reach = layout.drawing.grown(-20);
  return glm::vec2(std::clamp(at->x, reach.left, std::max(reach.left, reach.right)),
                   std::clamp(at->y, reach.top, std::max(reach.top, reach.bottom)));
}

void drawSectionHandle(ImDrawList* list, const Scene& scene, const Frame& frame,
                       const SheetLayout& layout) {
  const auto at = sectionHandle(scene, frame, layout);
  if (!at) return;
  const Pen pen(list);
  const float u = pen.unit();
  glm::vec2 way = perMetre(scene, frame, layout).value_or(glm::vec2(1, 0));
  way = glm::length(way) < 1e-3f ? glm::vec2(0, 1) : glm::normalize(way);
  const glm::vec2 across{-way.y, way.x};
  list->AddCircleFilled(im(*at), 14 * u, colour(ink::kCard, 0.95f));
  list->AddCircle(im(*at), 14 * u, colour(ink::kInk), 0, 1.6f * u);
  for (const float side : {-1.0f, 1.0f}) {
    const glm::vec2 tip = *at + way * side * 25.0f * u, base = *at + way * side * 16.0f * u;
    list->AddTriangleFilled(im(tip), im(base + across * side * 6.0f * u),
                            im(base - across * side * 6.0f * u), colour(ink::kInk));
  }
  const glm::vec2 size = pen.size("S", Cut::Bold);
  pen.text(*at - size * 0.5f, ink::kInk, "S", Cut::Bold);
  pen.haloText(*at + glm::vec2(-pen.size("pull the section").x / 2, -44 * u), ink::kInk,
               "pull the section");
}

void dragSection(Section& section, const Scene& scene, const Frame& frame,
                 const SheetLayout& layout, const glm::vec2& by) {
  const auto metre = perMetre(scene, frame, layout);
  if (!metre) return;
  const float length2 = glm::dot(*metre, *metre);
  // Looked at square on, the plane does not move across the sheet: up and down pulls it then.
  const float metres = length2 > 25 ? glm::dot(by, *metre) / length2 : by.y / 60;
  const glm::vec3 normal{section.plane};
  float low = 1e30f, high = -1e30f;
  for (int i = 0; i < 8; ++i) {
    const glm::vec3 corner{i & 1 ? scene.high.x : scene.low.x, i & 2 ? scene.high.y : scene.low.y,
                           i & 4 ? scene.high.z : scene.low.z};
    low = std::min(low, glm::dot(normal, corner));
    high = std::max(high, glm::dot(normal, corner));
  }
  section.plane.w = std::clamp(section.plane.w - metres, -high + 0.01f, -low - 0.01f);
}

}  // namespace viewer
