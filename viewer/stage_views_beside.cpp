#include "viewer/stage_views_beside.h"

namespace viewer {

StageViewsBeside::StageViewsBeside(const model::Model& model, const Scene& scene,
                                   const Picker& picker)
    : views_(model.programme.stages.size()),
      chooser_([this, &model, &scene, &picker](const std::stop_token& stop) {
        eachStageView(model, scene, picker, [&](const StageView& view) {
          views_[known_] = view;
          ++known_;
          known_.notify_all();
          return !stop.stop_requested();
        });
      }) {}

StageViewsBeside::~StageViewsBeside() = default;  // the thread is asked to stop, and waited for

const StageView* StageViewsBeside::at(int stage) const {
  return stage >= 0 && std::size_t(stage) < known_ ? &views_[std::size_t(stage)] : nullptr;
}

const StageView* StageViewsBeside::waitFor(int stage) const {
  if (stage < 0 || std::size_t(stage) >= views_.size()) return nullptr;
  for (std::size_t known = known_; known <= std::size_t(stage); known = known_) known_.wait(known);
  return &views_[std::size_t(stage)];
}

}  // namespace viewer
