// Section planes that every job has.
#pragma once

#include "viewer/frame.h"

namespace viewer {

// Upright through the middle of the box, looking north: what is south of it is cut away.
Section standardSection(const glm::vec3& low, const glm::vec3& high);

}  // namespace viewer
