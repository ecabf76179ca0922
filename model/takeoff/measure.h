// Reading sizes off solids.
#pragma once

#include "model/geometry/solid.h"

namespace model {

// How many separate pieces a solid has: rafters in one element, joists in another. Points at the
// same place belong to the same piece only where triangles share them.
size_t pieceCount(const Solid& solid);

// The extent of the solid along a direction (unit), metres.
double extentAlong(const Solid& solid, const Vec3& direction);

// The middle of the solid's bounds.
Vec3 middleOf(const Solid& solid);

}  // namespace model
