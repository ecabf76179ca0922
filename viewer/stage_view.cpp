#include "viewer/stage_view.h"

#include <algorithm>

#include "viewer/commands/clear_view.h"

namespace viewer {
namespace {

// From the first boards to the slab, what is made lies in holes or flat on the ground.
bool liesLow(model::StageKind kind) {
  return kind >= model::StageKind::TopsoilStrip && kind <= model::StageKind::GroundSlab;
}

}  // namespace

StageView stageView(const model::Model& model, int stage) {
  const auto& stages = model.programme.stages;
  StageView result{clearView(model), false};
  if (stages.empty()) return result;
  const int index = std::clamp(stage, 0, int(stages.size()) - 1);
  result.steep = liesLow(stages[size_t(index)].key.kind);
  return result;
}

}  // namespace viewer
