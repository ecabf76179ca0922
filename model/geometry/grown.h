// A plane figure with a margin round it.
#pragma once

#include "model/geometry/polygon.h"

namespace model {

// Everything within `distance` of the polygon (anticlockwise), corners kept sharp.
Regions grown(const Polygon& polygon, double distance);

}  // namespace model
