// The one place where the model's number types are settled.
//
// Everything inside the model is metres, double precision, right-handed:
// x east, y north, z up, measured from the job's datum (z = 0.000).
// Narrowing to float happens once, at the GPU buffer and at the glTF accessor.
#pragma once

#include <glm/vec2.hpp>
#include <glm/vec3.hpp>

namespace model {

using Vec2 = glm::dvec2;
using Vec3 = glm::dvec3;

}  // namespace model
