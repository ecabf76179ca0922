// What lies behind the face of a wall of one brick or more.
#pragma once

#include <vector>

#include "model/bond/dry_bond.h"

namespace model {

// Behind each stretcher lie headers, behind each header others, as deep as the leaf is; what is
// left at its back is laid lengthwise. So each row is tied to the one before it in one of two
// courses. At a square corner that the wall runs through, the other wall's courses take the place
// of all but the face: there the rows behind begin at `backFrom`, or end at `backTo`.
void addBackRows(const BrickSizes& sizes, double backFrom, double backTo,
                 std::vector<LaidPiece>& laid);

}  // namespace model
