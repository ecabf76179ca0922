// The player of the programme's clock: plays, steps, scrubs. Knows nothing of the screen.
#pragma once

#include <utility>
#include <vector>

namespace viewer {

class Playback {
 public:
  static constexpr double kSecondsPerStage = 4;
  static constexpr double kSlowest = 0.25, kFastest = 8;

  // Keeps the time as far as the new programme has it.
  void setStageCount(int count);
  int stageCount() const { return stageCount_; }

  double time() const { return time_; }
  bool playing() const { return playing_; }
  double speed() const { return speed_; }
  bool loop() const { return loop_; }

  // At the end, playing begins again from the start.
  void play();
  // To the end of this stage or, when there already, of the next, and no further.
  void playStage();
  void pause() { playing_ = false; }
  void toggle() { playing_ ? pause() : play(); }
  // Real seconds; true when the time changed. Stops at the end unless looping.
  bool advance(double seconds);
  // To the end of this stage or, when there already, of the next; back likewise. Both pause.
  void stepForward();
  void stepBack();
  // Held to the programme; pauses.
  void goTo(double time);
  // Doubles or halves, between the slowest and the fastest.
  void faster();
  void slower();
  void setSpeed(double speed);
  void setLoop(bool on) { loop_ = on; }
  // How long each stage takes at speed 1, seconds over 0; stages beyond the list, and all of them
  // when it is empty, take kSecondsPerStage.
  void setPace(std::vector<double> secondsOfStages) { pace_ = std::move(secondsOfStages); }

 private:
  double secondsOf(double time) const;

  std::vector<double> pace_;
  int stageCount_ = 0;
  double time_ = 0, speed_ = 1;
  double until_ = -1;  // where playing stops; below 0: at the end
  bool playing_ = false, loop_ = false;
};

}  // namespace viewer
