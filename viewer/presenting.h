// Walking a client through the stages: full screen, large plain words, nothing to read but them.
#pragma once

#include <optional>

#include "viewer/playback.h"
#include "viewer/view_state.h"

namespace viewer {

class Presenting {
 public:
  bool on() const { return kept_.has_value(); }
  // The screen is dark: those who listen look at the speaker.
  bool dark() const { return dark_; }

  // What was shown before is kept and comes back at the end.
  void begin(ViewState& state, Playback& playback);
  void end(ViewState& state, Playback& playback);

  // What a key says, as keyboards and presenters' remotes have them: page keys, arrows, B or full
  // stop for a dark screen.
  enum class Act { None, Next, Back, Dark, End };
  static Act actOf(int key);

  // The next stage plays by itself and stops at its end; back is to the end of the one before.
  void next(Playback& playback);
  void back(Playback& playback);
  void toggleDark() { dark_ = !dark_; }

 private:
  struct Kept {
    Overlays overlays;
    Switches switches;
    Tab tab = Tab::None;
    bool follows = false;
    Round round = Round::None;
    Pace pace = Pace::Stage;
    double speed = 1;
  };
  std::optional<Kept> kept_;
  bool dark_ = false;
};

}  // namespace viewer
