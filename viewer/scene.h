// The model made ready to draw: plain arrays, no OpenGL. Built once per model, never per frame.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include <glm/mat4x4.hpp>
#include <glm/vec3.hpp>

#include "model/model.h"

namespace viewer {

// Positions are metres from Scene::origin. `appears` and `goes` are times on the programme's clock;
// inside a triangle they vary linearly, so a wall grows smoothly without an upload.
struct Vertex {
  glm::vec3 position;
  glm::vec3 normal;
  float appears;
  float goes;
  std::uint32_t element;   // index into Works::elements
  std::uint32_t material;  // model::Material
};

// A crease, outline or change of material, drawn as an ink line.
struct EdgeVertex {
  glm::vec3 position;
  float appears;
  float goes;
  std::uint32_t element;
};

struct ElementRange {
  std::uint32_t firstIndex = 0, indexCount = 0;
  std::uint32_t firstEdge = 0, edgeCount = 0;  // in EdgeVertex pairs' vertices
  glm::vec3 low{0}, high{0};
  float appears = 0, goes = 0;  // first appearance, last moment
};

struct Scene {
  model::Vec3 origin{0, 0, 0};
  std::vector<Vertex> vertices;
  std::vector<std::uint32_t> indices;
  std::vector<EdgeVertex> edges;              // two by two
  std::vector<ElementRange> elements;         // same order as Works::elements
  glm::vec3 low{0}, high{0};                  // of everything
  glm::vec3 buildingLow{0}, buildingHigh{0};  // without the ground and standing buildings
  double stageCount = 0;

  glm::vec3 local(const model::Vec3& p) const { return glm::vec3(p - origin); }
  model::Vec3 world(const glm::vec3& p) const { return model::Vec3(p) + origin; }
};

Scene buildScene(const model::Model& model);

}  // namespace viewer
