// Lengths that brickwork comes out at without cutting.
#pragma once

#include "model/settingout/setting_out.h"

namespace model {

// The length of so many half bricks, each with its joint, in metres. `joints` is what is added for
// the joints at the ends: 1 for an opening (a joint at both ends), 0 for a run against a wall at
// one end, -1 for a pier (free at both ends). Source: Brickwork Dimensions, Technical Information
// Sheet 9 (checks M02 to M04).
double coordinatingLength(const WallBuildUp& walls, int halfBricks, int joints);

// The half bricks whose length is nearest to that of an opening; at least one.
int halfBricksOfOpening(const WallBuildUp& walls, double width);

// Where the outer leaf stops when a lift ends at `level`: on the whole course at or under it, so
// that no lintel or joist is bedded in a wall that has passed it, and not over its top at the
// eaves. (The inner leaf stops at the level itself, with cut blocks if need be.)
double outerLeafStop(const Job& job, const Levels& levels, double level);

// What is left at the top of a height that is built in whole blocks from its bottom, each with its
// joint; 0 when they come out.
double cutBlockCourse(const WallBuildUp& walls, double height);

}  // namespace model
