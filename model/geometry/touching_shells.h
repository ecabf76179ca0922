// Shells of one solid that touch along an edge or at a point get points of their own.
#pragma once

#include "model/geometry/solid.h"

namespace model {

// Faces that meet along an edge in fours (two bodies corner to corner) are paired by the body that
// lies between them, and points are doubled where pairs need it, so that solidFault sees closed
// shells. Solids without such edges are left alone.
void separateTouchingShells(Solid& solid);

}  // namespace model
