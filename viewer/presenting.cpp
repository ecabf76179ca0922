#include "viewer/presenting.h"

#include <GLFW/glfw3.h>

#include <cmath>

namespace viewer {

void Presenting::begin(ViewState& state, Playback& playback) {
  if (on()) return;
  kept_ = Kept{state.overlays,   state.switches,  state.tab,       state.followStages,
               playback.round(), playback.pace(), playback.speed()};
  dark_ = false;
  state.overlays = {};
  state.overlays.clientWords = true;
  state.switches.levelPlane = false;
  state.tab = Tab::None;
  state.selected = state.selectedUnit = kNothing;
  state.measuring = state.placing = false;
  state.followStages = true;
  playback.setRound(Round::None);
  playback.setPace(Pace::Stage);
  playback.setSpeed(1);
  playback.pause();
}

void Presenting::end(ViewState& state, Playback& playback) {
  if (!on()) return;
  state.overlays = kept_->overlays;
  state.switches = kept_->switches;
  state.tab = kept_->tab;
  state.followStages = kept_->follows;
  playback.pause();
  playback.setRound(kept_->round);
  playback.setPace(kept_->pace);
  playback.setSpeed(kept_->speed);
  kept_.reset();
  dark_ = false;
}

Presenting::Act Presenting::actOf(int key) {
  switch (key) {
    case GLFW_KEY_RIGHT:
    case GLFW_KEY_DOWN:
    case GLFW_KEY_PAGE_DOWN:
    case GLFW_KEY_SPACE:
    case GLFW_KEY_ENTER:
    case GLFW_KEY_KP_ENTER:
      return Act::Next;
    case GLFW_KEY_LEFT:
    case GLFW_KEY_UP:
    case GLFW_KEY_PAGE_UP:
    case GLFW_KEY_BACKSPACE:
      return Act::Back;
    case GLFW_KEY_B:
    case GLFW_KEY_PERIOD:
      return Act::Dark;
    case GLFW_KEY_ESCAPE:
    case GLFW_KEY_F5:
    case GLFW_KEY_Q:
      return Act::End;
    default:
      return Act::None;
  }
}

void Presenting::next(Playback& playback) {
  dark_ = false;
  // While a stage plays, the hand that is in a hurry sees its end.
  if (playback.playing()) {
    playback.stepForward();
    return;
  }
  playback.playStage();
}

void Presenting::back(Playback& playback) {
  dark_ = false;
  playback.stepBack();
}

}  // namespace viewer
