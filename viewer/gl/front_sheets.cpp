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

std::array<Vertex, 4> frontSheet(CutFill::Kind kind, std::uint32_t element,
                                 const ElementRange& range, int material) {
  const bool placed = kind == CutFill::Kind::Placed;
  const Growth& growth = placed ? range.placed : range.removed;
  const glm::vec4 plane = frontPlane(growth, kind, growth.low);
  const PlaneAxes axes = axesOf(plane);
  const glm::vec3 anchor = anchorOf(plane, range);
  const glm::vec3 reach = (range.high - range.low) * 0.5f + kBeyond;
  const glm::vec3 right = axes.right * glm::dot(glm::abs(axes.right), reach);
  const glm::vec3 up = axes.up * glm::dot(glm::abs(axes.up), reach);
  std::array<Vertex, 4> sheet{};
  for (unsigned i = 0; i < sheet.size(); ++i) {
    Vertex& v = sheet[i];
    v.position = anchor + right * (i & 2 ? 1.0f : -1.0f) + up * (i & 1 ? 1.0f : -1.0f);
    v.normal = glm::vec3(plane);
    v.appears = placed ? range.appears : passes(range.placed, v.position);
    v.goes = placed ? passes(range.removed, v.position) : static_cast<float>(model::kNever);
    v.element = element;
    v.material = static_cast<std::uint32_t>(material) | kFrontFace;
  }
  return sheet;
}

SheetShift sheetShift(CutFill::Kind kind, const ElementRange& range, double time) {
  const bool placed = kind == CutFill::Kind::Placed;
  const Growth& growth = placed ? range.placed : range.removed;
  SheetShift shift;
  const float square = glm::dot(growth.direction, growth.direction);
  shift.by = growth.direction * ((growth.frontAt(time) - growth.low) / square);
  const Growth& other = placed ? range.removed : range.placed;
  const float later = passes(other, shift.by) - passes(other, glm::vec3(0));
  (placed ? shift.times.y : shift.times.x) = later;
  return shift;
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

void FrontSheets::upload(const Scene& scene, const std::vector<int>& materials) {
  std::vector<Vertex> corners;
  firstCorner_.clear();
  for (std::uint32_t i = 0; i < scene.elements.size(); ++i) {
    for (const auto kind : {CutFill::Kind::Placed, CutFill::Kind::Removed}) {
      const ElementRange& range = scene.elements[i];
      if (!(kind == CutFill::Kind::Placed ? range.placed : range.removed).moves()) continue;
      firstCorner_[{i, kind}] = static_cast<int>(corners.size());
      const auto sheet = frontSheet(kind, i, range, materials[i]);
      corners.insert(corners.end(), sheet.begin(), sheet.end());
    }
  }
  glBindBuffer(GL_ARRAY_BUFFER, buffer_);
  glBufferData(GL_ARRAY_BUFFER, static_cast<GLsizeiptr>(corners.size() * sizeof(Vertex)),
               corners.data(), GL_STATIC_DRAW);
}

unsigned FrontSheets::draw(std::span<const CutFill* const> cuts, const Scene& scene, double time,
                           Program& surface) const {
  std::vector<GLint> firsts;
  for (const CutFill* cut : cuts) {
    const auto first = firstCorner_.find({cut->element, cut->kind});
    if (first != firstCorner_.end()) firsts.push_back(first->second);
  }
  if (firsts.empty()) return 0;
  const std::vector<GLsizei> counts(firsts.size(), 4);
  const SheetShift shift = sheetShift(cuts[0]->kind, scene.elements[cuts[0]->element], time);
  surface.set("uShift", shift.by);
  surface.set("uTimesShift", shift.times);
  glBindVertexArray(array_);
  glMultiDrawArrays(GL_TRIANGLE_STRIP, firsts.data(), counts.data(),
                    static_cast<GLsizei>(firsts.size()));
  surface.set("uShift", glm::vec3(0));
  surface.set("uTimesShift", glm::vec2(0));
  return 1;
}

}  // namespace viewer
