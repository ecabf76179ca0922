// Garden walls on plan, as far as the drawing alone gives it.
#pragma once

#include <optional>

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
double gardenGauge(const WallBuildUp& walls, const GardenWall& wall);
// The course under whose bed the damp course lies, counted from 0 on the concrete; nothing without
// one. In a wall that does not reach its level it is no course of it.
std::optional<int> gardenDampCourse(const WallBuildUp& walls, const GardenWall& wall);
// How far a course stands out past the wall's faces: 0 below the corbelled ones.
double gardenCorbel(const WallBuildUp& walls, const GardenWall& wall, int course);

// The piers that can be bonded with a wall: half a brick or a brick larger than it.
bool gardenPierFits(const GardenWall& wall);

}  // namespace model
