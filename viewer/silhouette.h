// What is seen of the building from above the ground, as few points.
#pragma once

#include <vector>

#include <glm/vec3.hpp>

#include "model/model.h"

namespace viewer {

// The corners of the walls with what stands round them, at the lowest ground; the eaves; the ends
// of every line of the roof; parapets with their copings. Local to `origin`. Empty for a building
// without a roof.
std::vector<glm::vec3> silhouetteOf(const model::Model& model, const model::Vec3& origin);

}  // namespace viewer
