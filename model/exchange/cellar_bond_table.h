// The bond of cellar walls in blocks as a table: the courses of each leaf and what is cut in them.
#pragma once

#include <optional>

#include "model/exchange/table_part.h"

namespace model {

// "cellar"; nothing where the walls are cast or there is no cellar.
std::optional<TablePart> cellarBondPart(const Model& model);

}  // namespace model
