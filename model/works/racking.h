// The stepped-back corners and reveals that a bricklayer raises before the wall between them.
#pragma once

#include <vector>

#include "model/bond/laid_leaf.h"
#include "model/walls/leaf_plan.h"

namespace model {

// The corner's rectangles, one a course, in a lift from z0 to z1: about a unit long at the top and
// half a unit longer each course down, to the joint that is next, over at most two fifths of the
// leaf, and never past `limit` nor a jamb. `module` is a unit and its
// joint. Empty when there is no room for a corner.
std::vector<Rect> rackedCorner(const LaidLeaf& laid, const WallLayer& layer, bool atStart,
                               double limit, double z0, double z1, double module);

// The same beside openings that begin at or under z0: up each jamb and stepped back from it, where
// the pier leaves at least a unit between these and the `corners` at its other end.
std::vector<Rect> rackedReveals(const LaidLeaf& laid, const LeafPlan& plan,
                                const std::vector<Rect>& corners, double z0, double z1,
                                double module);

// The length of leaf from its start (or end) that is free, between two levels, of air bricks and of
// lintels and padstones with room to bed them; lintels that are laid before the lift goes up do not
// count. At openings a lead ends by itself, and it may go on under a sill.
double freeLength(const LeafPlan& plan, bool fromStart, double z0, double z1);

}  // namespace model
