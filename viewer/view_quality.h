// How much a frame may cost: less while things move slowly, all of it when they stand still.
#pragma once

#include "viewer/frame.h"

namespace viewer {

class ViewQuality {
 public:
  static constexpr double kTooSlow = 1.0 / 18, kFastEnough = 1.0 / 40;  // seconds a frame

  // The time one moving frame took. Several slow ones running lower the quality by a step, many
  // quick ones raise it.
  void measured(double seconds);
  // 0 is the best; lines, lettering and materials never suffer.
  int steps() const { return steps_; }
  static constexpr int kMostSteps = 3;
  // Takes from the frame what this quality has no time for; nothing when it stands still.
  void apply(Frame& frame, bool moving) const;

 private:
  int steps_ = 0, slow_ = 0, quick_ = 0;
};

}  // namespace viewer
