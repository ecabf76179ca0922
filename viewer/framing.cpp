#include "viewer/framing.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include <glm/common.hpp>

namespace viewer {
namespace {

using Points = std::vector<glm::vec3>;

Points cornersOf(const glm::vec3& low, const glm::vec3& high) {
  Points corners;
  for (int i = 0; i < 8; ++i)
    corners.push_back({i & 1 ? high.x : low.x, i & 2 ? high.y : low.y, i & 4 ? high.z : low.z});
  return corners;
}

// Where the points fall, pixels; nothing when one is behind the eye.
std::optional<Box> seenBox(const Camera& camera, const Points& points, float width, float height) {
  Box seen{1e30f, 1e30f, -1e30f, -1e30f};
  for (const glm::vec3& point : points) {
    const auto at = camera.project(point, double(width / height));
    if (!at) return std::nullopt;
    seen = {std::min(seen.left, at->x * width), std::min(seen.top, at->y * height),
            std::max(seen.right, at->x * width), std::max(seen.bottom, at->y * height)};
  }
  return seen;
}

Camera framedPoints(const Camera& camera, const Points& points, const SheetLayout& layout) {
  constexpr float kMargin = 1.03f;
  constexpr int kSteps = 12;  // of nearing: in perspective neither move is exact
  const Box& d = layout.drawing;
  const float width = layout.sheet.width(), height = layout.sheet.height();
  Camera result = camera;
  glm::vec3 low = points.front(), high = low;
  for (const glm::vec3& point : points) {
    low = glm::min(low, point);
    high = glm::max(high, point);
  }
  result.frame(low, high, double(width / height));
  for (int i = 0; i < kSteps; ++i) {
    const auto seen = seenBox(result, points, width, height);
    if (!seen) break;
    const float larger = std::max(seen->width() / d.width(), seen->height() / d.height());
    result.distance *= double(std::clamp(larger * kMargin, 0.2f, 5.0f));
    const auto now = seenBox(result, points, width, height);
    if (!now) break;
    const glm::vec2 aside = (d.centre() - now->centre()) / glm::vec2(width, height);
    result.pan(aside, double(width / height));
  }
  return result;
}

}  // namespace

Camera framed(const Camera& camera, const glm::vec3& low, const glm::vec3& high,
              const SheetLayout& layout) {
  return framedPoints(camera, cornersOf(low, high), layout);
}

Camera framedBuilding(const Camera& camera, const Scene& scene, const SheetLayout& layout,
                      bool underGround) {
  // Beside an elevation the scaffold, boards, dimension lines and corner letters would be lost; in
  // perspective they stand before and behind the walls.
  constexpr float kBesideElevation = 1.9f, kBesideCorner = 0.6f;
  if (!camera.parallel && !underGround && !scene.silhouette.empty())
    return framedPoints(camera, scene.silhouette, layout);
  const float beside = camera.parallel ? kBesideElevation : kBesideCorner;
  const glm::vec3 round{beside, beside, 0};
  return framed(camera, scene.buildingLow - round, scene.buildingHigh + round, layout);
}

std::optional<Camera> fittedView(const std::string& name, const Scene& scene,
                                 const SheetLayout& layout, bool underGround) {
  auto camera = standardView(name, scene.buildingLow, scene.buildingHigh, 1.5);
  if (!camera) return std::nullopt;
  if (name == "plan") return framed(*camera, scene.low, scene.high, layout);
  return framedBuilding(*camera, scene, layout, underGround);
}

double shapeOf(const Scene& scene) {
  const glm::vec3 size = scene.buildingHigh - scene.buildingLow;
  const double across = std::hypot(double(size.x), double(size.y));
  // Looked at a little from above, as the corner views do.
  return across / std::max(0.1, double(size.z) + across * 0.4);
}

}  // namespace viewer
