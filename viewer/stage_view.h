// The view that shows a stage's own work best.
#pragma once

#include <string>

#include "model/model.h"

namespace viewer {

struct StageView {
  std::string view;    // a standard corner view
  bool steep = false;  // from higher up: the work lies in or on the ground
  bool operator==(const StageView&) const = default;
};

// `stage` is an index into the programme; one outside it is held to it.
StageView stageView(const model::Model& model, int stage);

}  // namespace viewer
