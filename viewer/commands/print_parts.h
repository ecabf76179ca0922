// Tables that belong together, printed: all of them, or one.
#pragma once

#include <string>
#include <vector>

#include "model/exchange/table_part.h"

namespace viewer {

// `only` is a part's key, or empty for all of them; as CSV there is no such thing as all of them.
// Returns the exit status.
int printParts(const std::vector<model::TablePart>& parts, const std::string& only,
               model::TableStyle style);

}  // namespace viewer
