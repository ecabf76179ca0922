// What drawing a gauge rod and naming it share. Private to this folder.
#pragma once

#include "viewer/overlays/gauge_rod_place.h"

namespace viewer {

// A level of the rod where it lies on the sheet, at its left and right edge.
struct Across {
  glm::vec2 left{0, 0}, right{0, 0};
};
// Nothing behind the eye.
std::optional<Across> acrossAt(const OverlaySheet& sheet, const StandingRod& rod, double level);

// The marks, the courses that are not whole and which rod it is, in a column beside it.
void drawRodNames(OverlaySheet& sheet, const StandingRod& rod);

}  // namespace viewer
