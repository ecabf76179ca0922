// The player of the programme's clock: plays, steps, scrubs. Knows nothing of the screen.
#pragma once

#include <array>
#include <memory>
#include <vector>

#include "viewer/beats.h"

namespace viewer {

// What takes the same time while playing: every stage, every working day, or every piece: a brick,
// a block, or a thing that is made in one.
enum class Pace { Stage, Day, Piece };
inline constexpr int kPaceCount = 3;
// "by stage", "by day", "by piece".
const char* nameOf(Pace pace);

// What is played again and again.
enum class Round { None, All, Stage };
inline constexpr int kRoundCount = 3;

class Playback {
 public:
  static constexpr double kSecondsPerStage = 4;
  static constexpr double kDaysPerSecond = 1, kPiecesPerSecond = 8;  // at speed 1
  static constexpr double kSlowest = 0.25, kFastest = 8;

  // Keeps the time as far as the new programme has it. The beats of days and pieces are the old
  // programme's: they are dropped, and until there are others it plays by stage.
  void setStageCount(int count);
  int stageCount() const { return stageCount_; }

  double time() const { return time_; }
  bool playing() const { return playing_; }
  double speed() const { return speed_; }
  Round round() const { return round_; }
  Pace pace() const { return pace_; }
  // Playing, it lets a wait pass.
  bool waits() const;

  // At the end, playing begins again from the start.
  void play();
  // To the end of this stage or, when there already, of the next, and no further.
  void playStage();
  void pause() { playing_ = false; }
  void toggle() { playing_ ? pause() : play(); }
  // Real seconds; true when the time may have changed. Stops at the end unless going round.
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
  // Round a stage: the one that the sheet shows when the playing begins.
  void setRound(Round round);
  // How long each stage takes at speed 1, seconds over 0; stages beyond the list, and all of them
  // when it is empty, take kSecondsPerStage.
  void setStageSeconds(std::vector<double> secondsOfStages);
  // The time stays what it is.
  void setPace(Pace pace);
  // The beats of days or of pieces, from 0 to the stage count; null: none are known.
  void setBeats(Pace of, std::shared_ptr<const Beats> beats);
  bool hasBeats(Pace of) const { return beats_[size_t(of)] != nullptr; }

 private:
  const Beats& beats() const;
  void layOutStages();
  // Takes up the seconds of the clock's time.
  void takeUp();
  double goRound(double seconds) const;
  int stageShown() const;

  std::array<std::shared_ptr<const Beats>, kPaceCount> beats_;
  std::vector<double> secondsOfStages_;
  int stageCount_ = 0;
  double time_ = 0, speed_ = 1;
  double seconds_ = 0;  // of the beats, at which the clock is; it rests where they go on
  double until_ = -1;   // where playing stops; below 0: at the end
  int roundStage_ = 0;
  bool playing_ = false;
  Round round_ = Round::None;
  Pace pace_ = Pace::Stage;
};

}  // namespace viewer
