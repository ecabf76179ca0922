// One element's solid turned into flat-shaded triangles and ink lines.
#pragma once

#include <functional>
#include <utility>

#include "viewer/scene.h"

namespace viewer {

// Scratch space, kept between elements so that building a scene allocates little.
class ElementBuilder {
 public:
  // True where a face, given by a point on it and its normal, is a side of the block of ground.
  using CutFace = std::function<bool(const glm::dvec3& point, const glm::dvec3& normal)>;

  // What is made of elements one after the other. The elements' ranges count from the first.
  struct Made {
    RawVector<Vertex> vertices;
    RawVector<std::uint32_t> indices;
    RawVector<EdgeVertex> edges;
  };

  // `made` grows.
  ElementBuilder(const model::Vec3& origin, Made& made) : origin_(origin), made_(made) {}
  // Appends those of the element, which has that index in the model, and fills in its range, whose
  // `placed` and `removed` are set. `isCutFace` may be empty.
  void add(const model::Element& element, std::uint32_t index, ElementRange& range,
           const CutFace& isCutFace);

 private:
  struct Moments {
    float appears, goes;
  };
  struct Corner {
    std::uint32_t normal;  // as EdgeVertex has them
    std::uint32_t vertex;
    std::int32_t next;
  };
  // Where a point lies of the planes, a bit for each.
  struct Sides {
    std::uint8_t under, over;
  };
  struct Side {
    std::uint32_t a, b;           // welded points, a < b
    std::uint32_t first, second;  // triangles that meet there
    std::uint32_t count;          // how many do: two, or more where shells touch
    std::int32_t next;            // of those with the same a
  };

  void weld(const model::Solid& solid);
  void addTriangle(std::uint32_t triangle);
  void addSide(std::uint32_t a, std::uint32_t b, std::uint32_t triangle);
  void adoptSlivers();
  void addEdges();
  void putEdge(const glm::vec3& p, const Moments& moments, std::uint32_t a, std::uint32_t b);
  // `a` and `b` as EdgeVertex has them.
  void emit(std::uint32_t from, std::uint32_t to, std::uint32_t a, std::uint32_t b);
  std::uint32_t vertexAt(std::uint32_t point, std::uint32_t triangle);
  Sides sidesOf(const glm::vec3& p) const;
  std::uint32_t newVertex(const glm::vec3& p, const Moments& moments, const glm::dvec3& normal);
  std::uint32_t newVertex(const glm::vec3& p, const glm::dvec3& normal) {
    return newVertex(p, momentsAt(p), normal);
  }
  Moments momentsAt(const glm::vec3& p) const {
    return {range_->placed.at(p), range_->removed.at(p)};
  }
  void setSpan(size_t firstVertex);
  void split(const glm::vec3 (&corners)[3], const glm::dvec3& normal);

  model::Vec3 origin_;  // of the scene
  Made& made_;
  ElementRange* range_ = nullptr;
  std::uint32_t index_ = 0, material_ = 0;
  std::vector<std::pair<glm::vec3, float>> planes_;  // clampPlanes of the element
  bool slivers_ = false;
  const CutFace* isCutFace_ = nullptr;
  std::vector<glm::vec3> points_;          // welded, local
  std::vector<Moments> moments_;           // of each of them
  std::vector<Sides> sidesOfPlanes_;       // of each of them; none where there are no planes
  std::vector<std::uint32_t> welded_;      // solid point -> welded point
  std::vector<std::uint32_t> slots_;       // hash table of welded points
  std::vector<std::int32_t> firstCorner_;  // of each welded point
  RawVector<Corner> corners_;
  std::vector<glm::dvec3> normals_;  // of each triangle; zero for a flat one
  std::vector<std::uint32_t> packedNormals_;
  std::vector<glm::uvec3> triangles_;
  RawVector<Side> sides_;
  std::vector<std::int32_t> firstSide_;  // of each welded point
};

// Heights along a growth's direction at which its clock stops being linear inside the range;
// a triangle or line that spans one is split there.
std::vector<std::pair<glm::vec3, float>> clampPlanes(const ElementRange& range);

}  // namespace viewer
