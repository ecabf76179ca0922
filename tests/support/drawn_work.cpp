#include "tests/support/drawn_work.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

#include <glm/geometric.hpp>

#include "viewer/stage_work.h"

namespace viewer {
namespace {

constexpr int kBarePoints = 20000;

void flag(Scene& scene, std::uint32_t element, std::uint32_t material) {
  ElementRange& range = scene.elements[element];
  range.unitCount = range.rakedCount = range.leaf = 0;  // flat faces in one colour
  range.glass = range.soil = range.quiet = false;
  for (std::uint32_t i = range.firstIndex; i < range.firstIndex + range.indexCount; ++i)
    scene.vertices[scene.indices[i]].material = material;
}

void leaveOut(Scene& scene, std::uint32_t element) {
  ElementRange& range = scene.elements[element];
  range.indexCount = range.edgeCount = range.unitCount = range.rakedCount = 0;
}

// Small squares just over what was laid bare, as a thing of its own; only those that face the eye,
// since the others are the backs of surfaces that nothing but air is in front of.
void addBare(Scene& scene, const std::vector<WorkPoint>& bare, const glm::vec3& eye,
             std::uint32_t material) {
  constexpr float kOver = 0.004f, kHalf = 0.4f;
  ElementRange range;
  range.firstIndex = std::uint32_t(scene.indices.size());
  range.firstEdge = std::uint32_t(scene.edges.size());
  range.appears = range.complete = range.placed.from = -1;
  range.goes = range.fades = 1e9f;
  range.removed = never();
  range.grain = 1e9f;  // never too small to be drawn
  range.low = glm::vec3(1e30f), range.high = glm::vec3(-1e30f);
  const auto element = std::uint32_t(scene.elements.size());
  for (const WorkPoint& point : bare) {
    if (glm::dot(eye - point.at, point.normal) <= 0) continue;
    const glm::vec3 side =
        std::abs(point.normal.z) > 0.9f ? glm::vec3(1, 0, 0) : glm::vec3(0, 0, 1);
    const glm::vec3 u = glm::normalize(glm::cross(side, point.normal));
    const glm::vec3 v = glm::cross(point.normal, u);
    const float half = std::sqrt(point.area) * kHalf;
    const glm::vec3 middle = point.at + point.normal * kOver;
    const auto first = std::uint32_t(scene.vertices.size());
    for (const glm::vec2 at : {glm::vec2(-1, -1), {1, -1}, {1, 1}, {-1, 1}}) {
      const glm::vec3 p = middle + (u * at.x + v * at.y) * half;
      scene.vertices.push_back({p, point.normal, -1, 1e9f, element, material});
      range.low = glm::min(range.low, p);
      range.high = glm::max(range.high, p);
    }
    for (const std::uint32_t i : {0u, 1u, 2u, 0u, 2u, 3u}) scene.indices.push_back(first + i);
  }
  range.indexCount = std::uint32_t(scene.indices.size()) - range.firstIndex;
  if (range.indexCount == 0) return;
  scene.elements.push_back(range);
  scene.order.insert(scene.order.begin(), element);  // by their first moment
}

struct Sheet {
  int width, height;
  float scale;
};

DrawnWork drawnAt(const Sheet& sheet, const Scene& scene, const Picker& picker,
                  const StageView& view, int stage, Renderer& renderer, Offscreen& offscreen) {
  const StageWork work = shownWork(scene, picker, stage);
  StageWork gone = work;
  gone.made.clear();
  const std::vector<WorkPoint> bare = workPoints(scene, picker, gone, stage, kBarePoints);
  std::vector<bool> own(scene.elements.size());
  for (const std::uint32_t element : work.made) own[element] = true;
  Frame frame;
  frame.time = stage + 1;
  frame.stage = stage;
  frame.camera = cameraOf(view, layOutSheet(sheet.width, sheet.height, sheet.scale));
  frame.shadows = frame.edges = false;
  frame.samples = 1;
  const auto draw = [&](bool alone, model::Material material) {
    Scene drawn = scene;
    for (std::uint32_t i = 0; i < scene.elements.size(); ++i) {
      if (own[i]) flag(drawn, i, std::uint32_t(material));
      if (alone && !own[i]) leaveOut(drawn, i);
    }
    addBare(drawn, bare, frame.camera.eye(), std::uint32_t(material));
    frame.section = alone ? Section{} : view.section;
    frame.seeThrough = alone ? SeeThrough::Nothing : view.seeThrough;
    renderer.setScene(drawn);
    offscreen.begin(sheet.width, sheet.height, 1);
    renderer.draw(frame, sheet.width, sheet.height);
    return offscreen.read();
  };
  // True where the colour of the work makes a difference.
  const auto shown = [&](bool alone) {
    constexpr int kDifferent = 5;
    const Image dark = draw(alone, model::Material::Membrane);
    const Image light = draw(alone, model::Material::Render);
    std::vector<bool> result(size_t(sheet.width) * size_t(sheet.height));
    for (size_t i = 0; i < result.size(); ++i)
      for (size_t c = 0; c < 3; ++c)
        if (std::abs(int(dark.rgba[i * 4 + c]) - int(light.rgba[i * 4 + c])) > kDifferent)
          result[i] = true;
    return result;
  };
  const std::vector<bool> alone = shown(true), among = shown(false);
  DrawnWork result;
  for (size_t i = 0; i < alone.size(); ++i) {
    result.alone += alone[i];
    result.seen += alone[i] && among[i];
  }
  return result;
}

}  // namespace

DrawnWork drawnWork(const Scene& scene, const Picker& picker, const StageView& view, int stage,
                    Renderer& renderer, Offscreen& offscreen) {
  constexpr int kFew = 1000;  // pixels: one of them is a tenth of a percent then
  const DrawnWork small =
      drawnAt({640, 360, 0.5f}, scene, picker, view, stage, renderer, offscreen);
  if (small.alone == 0 || small.alone >= kFew) return small;
  return drawnAt({2560, 1440, 2}, scene, picker, view, stage, renderer, offscreen);
}

}  // namespace viewer
