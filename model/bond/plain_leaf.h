// A leaf of blocks with nothing in its way: no opening, no slope, no step of what it stands on.
#pragma once

#include "model/bond/laid_leaf.h"

namespace model {

// From `foot` up to `top` in whole courses, numbered from 0; the last one is cut to what is left,
// or made up in mortar where that is less than 20 mm without its bed. `layer` is the leaf of that
// wall of the bond's.
LaidLeaf layPlainLeaf(const WallBuildUp& walls, const BlockBond& bond, size_t wall,
                      const WallLayer& layer, double foot, double top);

}  // namespace model
