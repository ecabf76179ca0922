// What is seen of the building from above the ground, as few points.
#pragma once

#include <vector>

#include <glm/vec3.hpp>

#include "model/settingout/setting_out.h"

namespace viewer {

// The corners of the walls with what stands round them, at the lowest ground; the eaves; the ends
// of every line of the roof. Local to `origin`. Empty for a building without a roof.
std::vector<glm::vec3> silhouetteOf(const model::SettingOut& out, const model::Vec3& origin);

}  // namespace viewer
