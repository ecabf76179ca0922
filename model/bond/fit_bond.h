// How the stretches of all walls are filled, so that the courses meet in order right round.
#pragma once

#include "model/bond/dry_bond.h"

namespace model {

// `bond` has its sizes and its walls with their stretches. Both fit these and place the joints by
// course; wall 0 runs through at its first corner in course 0, and each next one butts where the
// one before it runs through. WallBond::odd says how it comes out.
void fitStretcherBond(DryBond& bond);
void fitQuarterBond(DryBond& bond);  // every other: on a grid of quarter bricks

// The course parity in which a wall runs through at its first corner, by wall, once `odd` is known.
std::vector<size_t> throughCourses(const DryBond& bond);

}  // namespace model
