#include "viewer/view_quality.h"

#include <algorithm>

namespace viewer {

void ViewQuality::measured(double seconds) {
  slow_ = seconds > kTooSlow ? slow_ + 1 : 0;
  quick_ = seconds < kFastEnough ? quick_ + 1 : 0;
  if (slow_ >= 3) {
    steps_ = std::min(steps_ + 1, kMostSteps);
    slow_ = 0;
  }
  if (quick_ >= 90) {
    steps_ = std::max(steps_ - 1, 0);
    quick_ = 0;
  }
}

void ViewQuality::apply(Frame& frame, bool moving) const {
  if (!moving) return;
  if (steps_ >= 1) frame.samples = std::min(frame.samples, 2);
  if (steps_ >= 2) frame.samples = 1;
  // Masonry that is laid already goes back to flat faces, nearer and nearer by.
  if (steps_ >= 2) frame.unitPixel *= steps_ >= 3 ? 0 : 0.4f;
  if (steps_ >= 3) frame.shadows = false;
}

}  // namespace viewer
