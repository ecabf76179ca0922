// Where units of one leaf end against units of another that runs the same way: garden walls at
// their piers, courses that stand out at those that do not. No OpenGL.
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "model/works/element.h"

namespace viewer {

inline constexpr double kWidestJoint = 0.030;  // metres; a wider gap is an opening

// The units that bring the mortar between: index into Works::units and kJointAtStart or
// kJointAtEnd. Of two that meet it is the one that the other hides more of, so that no mortar
// stands out past a face.
std::vector<std::array<std::uint32_t, 2>> jointsBetweenLeaves(const model::Works& works);

}  // namespace viewer
