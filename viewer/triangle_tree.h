// A bounding-volume tree over triangles, for rays.
#pragma once

#include <array>
#include <cstdint>
#include <functional>
#include <span>
#include <vector>

#include <glm/vec3.hpp>

#include "viewer/camera.h"

namespace viewer {

struct TriangleHit {
  std::uint32_t triangle = 0;  // index buffer position / 3
  float along = 0;
  bool backFace = false;
};

class TriangleTree {
 public:
  // Triangle i is indices[3i .. 3i+2] into positions; `stride` bytes from one position to the next.
  TriangleTree(std::span<const std::uint32_t> indices, const glm::vec3* positions, size_t stride);
  // The nearest hit that `counts`, or nothing: then `along` of the result is negative.
  TriangleHit nearest(const Ray& ray, const std::function<bool(const TriangleHit&)>& counts) const;
  // Whether any hit that `counts` is nearer than `before`: much less work than finding the nearest.
  bool meetsBefore(const Ray& ray, float before,
                   const std::function<bool(const TriangleHit&)>& counts) const;

 private:
  struct Node {
    glm::vec3 low, high;
    std::uint32_t first = 0;  // leaf: into order_; branch: its second child
    std::uint32_t count = 0;  // 0: a branch, whose first child is the next node
  };
  struct Box {
    glm::vec3 low, high, middle;
  };

  std::array<glm::vec3, 3> corners(std::uint32_t triangle) const;
  void build(std::vector<Box>& boxes, std::uint32_t first, std::uint32_t count);

  std::span<const std::uint32_t> indices_;
  const char* positions_;
  size_t stride_;
  std::vector<Node> nodes_;
  std::vector<std::uint32_t> order_;
};

}  // namespace viewer
