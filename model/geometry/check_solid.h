// Is a solid really one? Used by tests over every job and by assertions in Debug.
#pragma once

#include <string>

#include "model/geometry/solid.h"

namespace model {

// Empty when the solid is closed, manifold along its edges, outward-facing, of positive volume in
// every shell and finite; otherwise one sentence about the first fault found. Points with equal
// coordinates count as one.
std::string solidFault(const Solid& solid);

}  // namespace model
