// How fast the example shows itself.
#pragma once

#include <vector>

#include "model/model.h"

namespace viewer {

// Seconds for each stage: short where nothing is made or taken away, so that building is seen
// within a second of opening, and longer the more there is to watch.
std::vector<double> openingPace(const model::Model& model);

}  // namespace viewer
