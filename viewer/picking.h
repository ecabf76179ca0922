// What is under the pointer, worked out on the processor from the same arrays that are drawn.
#pragma once

#include <memory>
#include <optional>

#include "viewer/frame.h"
#include "viewer/scene.h"

namespace viewer {

struct Pick {
  std::uint32_t element = kNothing;
  glm::vec3 point{0};
  glm::vec3 normal{0};
  float along = 0;                // distance from the ray's start
  std::uint32_t unit = kNothing;  // the brick or block there, into Scene::units
};

enum class SnapKind { None, Corner, Edge };

struct Snap {
  SnapKind kind = SnapKind::None;
  glm::vec3 point{0};
};

// A bounding-volume tree over the scene, made when it is first asked; several threads may ask. The
// scene must outlive it.
class Picker {
 public:
  explicit Picker(const Scene& scene);
  ~Picker();
  // The nearest thing that stands at frame.time and is not cut away.
  std::optional<Pick> pick(const Ray& ray, const Frame& frame) const;
  // Whether there is any such thing nearer than `before`, metres along the ray; but not where a
  // thing that is just being made ends at the moment.
  bool meetsBefore(const Ray& ray, float before, const Frame& frame) const;
  // The corner or edge of the picked element nearest to the point, within `reach` metres.
  Snap snap(const Pick& pick, float reach) const;

 private:
  struct Impl;
  std::unique_ptr<Impl> impl_;
};

}  // namespace viewer
