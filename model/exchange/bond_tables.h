// The bond of the outer leaf as tables: how each stretch comes out, the bricks and pieces of each
// wall, and the moves that would bring the rest to brick sizes.
#pragma once

#include <string>
#include <vector>

#include "model/bond/dry_bond.h"
#include "model/exchange/tables.h"

namespace model {

struct BondPart {
  std::string key;  // "stretches", "bricks", "moves"
  Table table;
  std::vector<std::string> words;  // for people, below the table; without their full stops
};

// In that order.
std::vector<BondPart> bondParts(const Model& model, const DryBond& bond);

}  // namespace model
