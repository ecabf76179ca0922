// From which corner the building is best seen.
#pragma once

#include <string>

#include "model/model.h"

namespace viewer {

// The corner view, south ones first, with the least of other standing buildings in its way.
std::string clearView(const model::Model& model);

}  // namespace viewer
