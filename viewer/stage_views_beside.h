// The stages' own views, chosen on a thread of their own while the job is looked at already.
#pragma once

#include <atomic>
#include <thread>
#include <vector>

#include "viewer/stage_view.h"

namespace viewer {

class StageViewsBeside {
 public:
  // Starts to choose. All three must outlive it.
  StageViewsBeside(const model::Model& model, const Scene& scene, const Picker& picker);
  // Gives up what is not chosen yet; takes as long as one stage's view at most.
  ~StageViewsBeside();
  StageViewsBeside(const StageViewsBeside&) = delete;
  StageViewsBeside& operator=(const StageViewsBeside&) = delete;

  // `stage` is an index into the programme. Null when there is none such, or its view is not chosen
  // yet.
  const StageView* at(int stage) const;
  // The same, but waits until it is chosen.
  const StageView* waitFor(int stage) const;

 private:
  std::vector<StageView> views_;  // by stage; those below known_ are never written again
  std::atomic<std::size_t> known_{0};
  std::jthread chooser_;
};

}  // namespace viewer
