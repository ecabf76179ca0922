#include "viewer/playback.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace viewer {

namespace {
constexpr double kClose = 1e-6;  // stages: closer is the same moment
}

const char* nameOf(Pace pace) {
  return pace == Pace::Stage ? "by stage" : pace == Pace::Day ? "by day" : "by piece";
}

void Playback::setStageCount(int count) {
  stageCount_ = std::max(0, count);
  time_ = std::clamp(time_, 0.0, double(stageCount_));
  if (stageCount_ == 0) playing_ = false;
  beats_[size_t(Pace::Day)] = beats_[size_t(Pace::Piece)] = nullptr;
  layOutStages();
}

void Playback::setStageSeconds(std::vector<double> secondsOfStages) {
  secondsOfStages_ = std::move(secondsOfStages);
  layOutStages();
}

void Playback::layOutStages() {
  auto stages = std::make_shared<Beats>();
  for (int i = 0; i < stageCount_; ++i) {
    const bool own = size_t(i) < secondsOfStages_.size() && secondsOfStages_[size_t(i)] > 0;
    stages->add(i + 1, own ? secondsOfStages_[size_t(i)] : kSecondsPerStage);
  }
  beats_[size_t(Pace::Stage)] = std::move(stages);
  takeUp();
}

void Playback::setPace(Pace pace) {
  pace_ = pace;
  takeUp();
}

void Playback::setBeats(Pace of, std::shared_ptr<const Beats> beats) {
  beats_[size_t(of)] = std::move(beats);
  takeUp();
}

const Beats& Playback::beats() const {
  static const Beats kNone;
  for (const Pace pace : {pace_, Pace::Stage})
    if (const Beats* of = beats_[size_t(pace)].get(); of && of->size() > 0) return *of;
  return kNone;
}

void Playback::takeUp() { seconds_ = beats().secondsFrom(time_); }

int Playback::stageShown() const {
  return std::clamp(int(std::ceil(time_ - kClose)) - 1, 0, std::max(0, stageCount_ - 1));
}

void Playback::setRound(Round round) {
  round_ = round;
  roundStage_ = stageShown();
}

bool Playback::waits() const { return playing_ && beats().restsAt(seconds_); }

void Playback::play() {
  if (stageCount_ == 0) return;
  roundStage_ = stageShown();
  if (time_ >= stageCount_ - kClose && round_ != Round::Stage) time_ = 0;
  until_ = -1;
  playing_ = true;
  takeUp();
}

void Playback::playStage() {
  if (time_ >= stageCount_ - kClose) return;
  until_ = std::floor(time_ + kClose) + 1;
  playing_ = true;
  takeUp();
}

// Back to the begin once the end is passed, by as much as it is.
double Playback::goRound(double seconds) const {
  const Beats& all = beats();
  double begin = 0, end = all.length();
  if (round_ == Round::Stage) {
    begin = all.secondsFrom(roundStage_);
    end = all.secondsTo(roundStage_ + 1);
  }
  const double length = end - begin;
  if (seconds < end || length <= 0) return seconds;
  // The very begin of a stage is the end of the one before, which would flash up.
  const double least = round_ == Round::Stage ? length * 1e-3 : 0;
  return begin + std::max(std::fmod(seconds - begin, length), least);
}

bool Playback::advance(double seconds) {
  if (!playing_ || seconds <= 0) return false;
  seconds_ += seconds * speed_;
  if (round_ != Round::None && until_ < 0) seconds_ = goRound(seconds_);
  time_ = beats().timeAt(seconds_);
  if (until_ >= 0 && time_ >= until_) {
    time_ = until_;
    playing_ = false;
  }
  if (time_ >= stageCount_ && (round_ == Round::None || until_ >= 0)) {
    time_ = stageCount_;
    playing_ = false;
  }
  return true;
}

void Playback::stepForward() { goTo(std::floor(time_ + kClose) + 1); }

void Playback::stepBack() { goTo(std::ceil(time_ - kClose) - 1); }

void Playback::goTo(double time) {
  playing_ = false;
  if (!std::isfinite(time)) return;
  time_ = std::clamp(time, 0.0, double(stageCount_));
  takeUp();
}

void Playback::setSpeed(double speed) {
  if (std::isfinite(speed)) speed_ = std::clamp(speed, kSlowest, kFastest);
}

void Playback::faster() { setSpeed(speed_ * 2); }

void Playback::slower() { setSpeed(speed_ / 2); }

}  // namespace viewer
