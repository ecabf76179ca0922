// Which brick or block is at a point of a leaf. No OpenGL.
#pragma once

#include <cstdint>

#include "viewer/scene.h"

namespace viewer {

struct UnitHit {
  std::uint32_t element = 0xffffffffu, unit = 0xffffffffu;  // unit into Scene::units
  bool found() const { return unit != 0xffffffffu; }
};

// The unit of the element that has the point, or the nearest one where that is in a joint; else a
// unit of another wall that turns the corner there. `normal` of the face on which the point lies.
// Only what is laid at that time.
UnitHit unitAt(const Scene& scene, std::uint32_t element, const glm::vec3& point,
               const glm::vec3& normal, double time);

}  // namespace viewer
