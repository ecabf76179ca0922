// Problems where there is one line for them and their place is in sight.
#pragma once

#include <optional>
#include <string>

#include "model/problems.h"

namespace model {

// "foundations.width is 120 mm; at least 300 mm is needed".
std::string inOneLine(const Problem& problem);

// The first error, in one line; nothing when there is none.
std::optional<std::string> firstError(const Problems& problems);

}  // namespace model
