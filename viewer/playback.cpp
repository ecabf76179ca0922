#include "viewer/playback.h"

#include <algorithm>
#include <cmath>

namespace viewer {

namespace {
constexpr double kClose = 1e-6;  // stages: closer is the same moment
}

void Playback::setStageCount(int count) {
  stageCount_ = std::max(0, count);
  time_ = std::clamp(time_, 0.0, double(stageCount_));
  if (stageCount_ == 0) playing_ = false;
}

void Playback::play() {
  if (stageCount_ == 0) return;
  if (time_ >= stageCount_ - kClose) time_ = 0;
  playing_ = true;
}

bool Playback::advance(double seconds) {
  if (!playing_ || seconds <= 0) return false;
  time_ += seconds * speed_ / kSecondsPerStage;
  if (time_ >= stageCount_) {
    if (loop_) {
      time_ = std::fmod(time_, double(stageCount_));
    } else {
      time_ = stageCount_;
      playing_ = false;
    }
  }
  return true;
}

void Playback::stepForward() { goTo(std::floor(time_ + kClose) + 1); }

void Playback::stepBack() { goTo(std::ceil(time_ - kClose) - 1); }

void Playback::goTo(double time) {
  playing_ = false;
  if (!std::isfinite(time)) return;
  time_ = std::clamp(time, 0.0, double(stageCount_));
}

void Playback::setSpeed(double speed) {
  if (std::isfinite(speed)) speed_ = std::clamp(speed, kSlowest, kFastest);
}

void Playback::faster() { setSpeed(speed_ * 2); }

void Playback::slower() { setSpeed(speed_ / 2); }

}  // namespace viewer
