// Pieces whose section across the cavity is the same all along: sheets and wedges.
#pragma once

#include "model/geometry/solid.h"
#include "model/walls/wall_layer.h"

namespace model {

// Points of `section` are (d, z): metres into the wall from its outer face, and level;
// anticlockwise with d to the right. One shell from s0 to s1 along the wall.
Solid alongWall(const WallLine& wall, const Polygon& section, double s0, double s1);
// The same in a layer: an end that is an end of the layer lies on its mitre.
Solid alongLayer(const WallLayer& layer, const Polygon& section, double s0, double s1);

}  // namespace model
