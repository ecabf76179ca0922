// Garden walls on plan, as far as the drawing alone gives it.
#pragma once

#include "model/geometry/polygon.h"
#include "model/job/job.h"

namespace model {

// Metres: so many half bricks with the joints between them.
double gardenThickness(const WallBuildUp& walls, double bricks);
// What the wall covers without its piers, anticlockwise: along its face and back along the other
// one. Its line is sound.
Polygon gardenFootprint(const WallBuildUp& walls, const GardenWall& wall);
// By how much its strip of concrete is wider than the wall, at each side.
double gardenFooting(const WallBuildUp& walls, const GardenWall& wall);
// How far its concrete reaches from the footprint at most: under the piers.
double gardenReach(const WallBuildUp& walls, const GardenWall& wall);
// Courses from its concrete to its top, and how high each is with its bed.
int gardenCourses(const WallBuildUp& walls, const GardenWall& wall);

// The piers that can be bonded with a wall: half a brick or a brick larger than it.
bool gardenPierFits(const GardenWall& wall);

}  // namespace model
