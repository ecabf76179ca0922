// What lies behind the face of a wall of one brick.
#pragma once

#include <vector>

#include "model/bond/dry_bond.h"

namespace model {

// Headers and closers go through the wall; behind each stretcher lies another. At a square corner
// that the wall runs through, the other wall's courses take the place of the back row: there it
// begins at `backFrom`, or ends at `backTo`.
void addBackRow(const BrickSizes& sizes, double backFrom, double backTo,
                std::vector<LaidPiece>& laid);

}  // namespace model
