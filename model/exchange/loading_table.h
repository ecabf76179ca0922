// What to load out where, lift by lift, as a table.
#pragma once

#include "model/exchange/table_part.h"

namespace model {

// Key "loading".
TablePart loadingPart(const Model& model);

}  // namespace model
