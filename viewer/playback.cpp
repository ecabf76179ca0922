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
  until_ = -1;
  playing_ = true;
}

void Playback::playStage() {
  if (time_ >= stageCount_ - kClose) return;
  until_ = std::floor(time_ + kClose) + 1;
  playing_ = true;
}

bool Playback::advance(double seconds) {
  if (!playing_ || seconds <= 0) return false;
  double left = seconds * speed_;
  if (loop_) {
    double round = 0;
    for (int stage = 0; stage < stageCount_; ++stage) round += secondsOf(stage);
    left = std::fmod(left, round);
  }
  while (left > 0 && time_ < stageCount_) {
    const double stage = secondsOf(time_);
    // To the end of this stage at most: the next may be longer or shorter.
    const double toEnd = (std::floor(time_) + 1 - time_) * stage;
    if (left >= toEnd)
      time_ = std::floor(time_) + 1;
    else
      time_ += left / stage;
    left -= toEnd;
    if (loop_ && time_ >= stageCount_) time_ = 0;
  }
  if (until_ >= 0 && time_ >= until_) {
    time_ = until_;
    playing_ = false;
  }
  if (time_ >= stageCount_) {
    time_ = stageCount_;
    playing_ = false;
  }
  return true;
}

double Playback::secondsOf(double time) const {
  const auto stage = static_cast<size_t>(std::max(0.0, std::floor(time)));
  return stage < pace_.size() && pace_[stage] > 0 ? pace_[stage] : kSecondsPerStage;
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
