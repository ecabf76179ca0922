// The model made ready to draw: plain arrays, no OpenGL. Built once per model, never per frame.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include <glm/mat4x4.hpp>
#include <glm/vec2.hpp>
#include <glm/vec3.hpp>
#include <glm/vec4.hpp>

#include "model/model.h"
#include "viewer/growth.h"
#include "viewer/raw_vector.h"
#include "viewer/unit_instance.h"

namespace viewer {

// Set in Vertex::material on the sides of the block of ground, which are drawn as cut earth.
inline constexpr std::uint32_t kCutFace = 0x100;
// Set where a thing stops for now because it is still growing: the material's inside is seen there.
inline constexpr std::uint32_t kFrontFace = 0x200;

// Positions are metres from Scene::origin. `appears` and `goes` are times on the programme's clock;
// inside a triangle they vary linearly, so a wall grows smoothly without an upload.
struct Vertex {
  glm::vec3 position;
  glm::vec3 normal;
  float appears;
  float goes;
  std::uint32_t element;   // index into Works::elements
  std::uint32_t material;  // model::Material, with kCutFace or without
};

// A crease, outline or change of material, drawn as an ink line. The normals of the two faces that
// meet there tell silhouettes from creases and hide the lines of the far side.
struct EdgeVertex {
  glm::vec3 position;
  float appears;
  float goes;
  std::uint32_t element;
  std::uint32_t normalA = 0, normalB = 0;  // glm::packSnorm4x8, w unused
};

struct ElementRange {
  std::uint32_t firstIndex = 0, indexCount = 0;
  std::uint32_t firstEdge = 0, edgeCount = 0;  // in EdgeVertex pairs' vertices
  glm::vec3 low{0}, high{0};
  float appears = 0, goes = 0;    // first appearance, last moment
  float complete = 0, fades = 0;  // from when it is wholly there, until when
  Growth placed, removed;
  float thickness = 0;     // metres, about: of a bar its width, of a slab twice its depth
  float grain = 0;         // metres: the side of a square as large as its triangles are on average
  bool quiet = false;      // stands there before work starts and is no ground
  bool soil = false;       // made transparent with the ground
  bool glass = false;      // seen through, and through to
  bool profile = false;    // a profile board or peg: hidden with the string lines
  glm::vec2 wallStart{0};  // where the bond, or the grain, starts, local
  glm::vec2 along{1, 0};   // which way it runs on plan, unit
  float wallPhase = 0;     // 0 or 1: the other bond at the next corner
  // Of masonry that is laid unit by unit; parts of Scene's arrays.
  std::uint32_t leaf = 0;                        // its leaf's header in Scene::leaves; 0: none
  std::uint32_t firstUnit = 0, unitCount = 0;    // in the order they are laid
  std::uint32_t firstRaked = 0, rakedCount = 0;  // those of them that are cut to a rake
  std::uint32_t firstNeighbour = 0, neighbourCount = 0;
};

// Sizes that the brick and block patterns repeat at, metres; `from` is the damp course's level.
struct Coursing {
  float brickLength = 0.215f, brickHeight = 0.065f;
  float blockLength = 0.440f, blockHeight = 0.215f;
  float joint = 0.010f;
  float from = 0;
};

struct Scene {
  model::Vec3 origin{0, 0, 0};  // z is always 0, so that local heights are levels
  RawVector<Vertex> vertices;
  RawVector<std::uint32_t> indices;           // element after element, by first appearance
  RawVector<EdgeVertex> edges;                // two by two, in the same order
  std::vector<ElementRange> elements;         // same order as Works::elements
  std::vector<std::uint32_t> order;           // indices of elements by first appearance
  glm::vec3 low{0}, high{0};                  // of everything
  glm::vec3 buildingLow{0}, buildingHigh{0};  // without the ground and standing buildings
  std::vector<glm::vec3> silhouette;      // points that show it when they are seen; none: its box
  std::vector<UnitInstance> units;        // bricks and blocks, in the order of `order`
  std::vector<std::uint32_t> modelUnits;  // of each, its index into Works::units
  std::vector<RakedInstance> raked;       // again those that are cut to a rake
  std::vector<std::uint32_t> neighbours;  // elements that make a corner with an element
  std::vector<glm::uvec4> leaves;         // the bond of every leaf: see leaf_table.h
  double stageCount = 0;
  Coursing coursing;

  glm::vec3 local(const model::Vec3& p) const { return glm::vec3(p - origin); }
  model::Vec3 world(const glm::vec3& p) const { return model::Vec3(p) + origin; }
};

// Linear in the number of triangles.
Scene buildScene(const model::Model& model);

}  // namespace viewer
