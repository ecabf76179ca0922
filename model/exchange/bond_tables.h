// The bond of the outer leaf as tables: how each stretch comes out, the bricks and pieces of each
// wall, and the moves that would bring the rest to brick sizes.
#pragma once

#include <string>
#include <vector>

#include "model/bond/dry_bond.h"
#include "model/exchange/table_part.h"

namespace model {

// "stretches", "bricks", "moves" and "units", in that order; then "cellar" where its walls are of
// blocks.
std::vector<TablePart> bondParts(const Model& model, const DryBond& bond);

}  // namespace model
