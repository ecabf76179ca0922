// Lengths that brickwork comes out at without cutting.
#pragma once

#include "model/job/job.h"

namespace model {

// The length of so many half bricks, each with its joint, in metres. `joints` is what is added for
// the joints at the ends: 1 for an opening (a joint at both ends), 0 for a run against a wall at
// one end, -1 for a pier (free at both ends). Source: Brickwork Dimensions, Technical Information
// Sheet 9 (checks M02 to M04).
double coordinatingLength(const WallBuildUp& walls, int halfBricks, int joints);

// The half bricks whose length is nearest to that of an opening; at least one.
int halfBricksOfOpening(const WallBuildUp& walls, double width);

}  // namespace model
