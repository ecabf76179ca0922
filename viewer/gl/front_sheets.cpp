#include "viewer/gl/front_sheets.h"

#include <epoxy/gl.h>

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "viewer/gl/gpu_scene.h"

namespace viewer {

namespace {

constexpr float kBeyond = 0.01f;  // metres that a sheet goes past what it fills

// When the front passes a point, also before and after the thing's own: a sheet's corners lie
// outside the thing, and between them times must run as they do inside it.
float passes(const Growth& growth, const glm::vec3& p) {
  if (!growth.moves()) return growth.from;
  const float share = (glm::dot(growth.direction, p) - growth.low) / (growth.high - growth.low);
  return growth.from + share * (growth.to - growth.from);
}

}  // namespace

PlaneAxes axesOf(const glm::vec4& plane) {
  const glm::vec3 normal(plane);
  const bool level = std::abs(normal.z) > 0.99f;
  const glm::vec3 right =
      level ? glm::vec3(1, 0, 0) : glm::normalize(glm::cross(glm::vec3(0, 0, 1), normal));
  return {right, glm::cross(normal, right)};
}

glm::vec3 anchorOf(const glm::vec4& plane, const ElementRange& range) {
  const glm::vec3 middle = (range.low + range.high) * 0.5f;
  const glm::vec3 normal(plane);
  return middle - normal * (glm::dot(normal, middle) + plane.w);
}

std::array<Vertex, 4> frontSheet(const CutFill& cut, const ElementRange& range, int material) {
  const PlaneAxes axes = axesOf(cut.plane);
  const glm::vec3 anchor = anchorOf(cut.plane, range);
  const glm::vec3 reach = (range.high - range.low) * 0.5f + kBeyond;
  const glm::vec3 right = axes.right * glm::dot(glm::abs(axes.right), reach);
  const glm::vec3 up = axes.up * glm::dot(glm::abs(axes.up), reach);
  const bool placed = cut.kind == CutFill::Kind::Placed;
  std::array<Vertex, 4> sheet{};
  for (unsigned i = 0; i < sheet.size(); ++i) {
    Vertex& v = sheet[i];
    v.position = anchor + right * (i & 2 ? 1.0f : -1.0f) + up * (i & 1 ? 1.0f : -1.0f);
    v.normal = glm::vec3(cut.plane);
    v.appears = placed ? range.appears : passes(range.placed, v.position);
    v.goes = placed ? passes(range.removed, v.position) : static_cast<float>(model::kNever);
    v.element = cut.element;
    v.material = static_cast<std::uint32_t>(material) | kFrontFace;
  }
  return sheet;
}

FrontSheets::FrontSheets() {
  glGenVertexArrays(1, &array_);
  glGenBuffers(1, &buffer_);
  glBindVertexArray(array_);
  glBindBuffer(GL_ARRAY_BUFFER, buffer_);
  describeFaces();
  glBindVertexArray(0);
}

FrontSheets::~FrontSheets() {
  glDeleteVertexArrays(1, &array_);
  glDeleteBuffers(1, &buffer_);
}

void FrontSheets::upload(const std::vector<const CutFill*>& cuts, const Scene& scene,
                         const std::vector<int>& materials) {
  corners_.clear();
  for (const CutFill* cut : cuts) {
    if (cut->kind == CutFill::Kind::Section) continue;
    const auto sheet = frontSheet(*cut, scene.elements[cut->element], materials[cut->element]);
    corners_.insert(corners_.end(), sheet.begin(), sheet.end());
  }
  if (corners_.empty()) return;
  glBindBuffer(GL_ARRAY_BUFFER, buffer_);
  glBufferData(GL_ARRAY_BUFFER, static_cast<GLsizeiptr>(corners_.size() * sizeof(Vertex)),
               corners_.data(), GL_STREAM_DRAW);
}

void FrontSheets::draw(int nth) const {
  glBindVertexArray(array_);
  glDrawArrays(GL_TRIANGLE_STRIP, nth * 4, 4);
}

}  // namespace viewer
