// What the keys do; listed for the user in panels/switch_pages.cpp.
#include <GLFW/glfw3.h>

#include <cmath>

#include "viewer/app_session.h"

namespace viewer {

void Session::handleKeys() {
  for (const KeyPress& press : window_.takeKeys()) pressed_.push_back(press);
  // The fields get their letters from here, in order with the keys that go from field to field.
  ImGuiIO& io = ImGui::GetIO();
  io.InputQueueCharacters.resize(0);
  bool letters = false;
  while (!pressed_.empty()) {
    framesDue_ = 3;
    const KeyPress press = pressed_.front();
    const bool waits =
        press.key == 0 ? freshField() && !ofShortcut_ : letters && leavesField(press);
    // Until the field that it is for has the keyboard, or its letters; the widget may have seen the
    // key and let go by then.
    if (waits) {
      midWord_ = letters;
      break;
    }
    pressed_.pop_front();
    if (press.key == 0) {
      // The letter of a key that has done something else is no letter.
      if (!ofShortcut_) io.AddInputCharacter(press.letter);
      letters = letters || !ofShortcut_;
      continue;
    }
    const bool types = typing() && press.key != GLFW_KEY_ESCAPE;
    ofShortcut_ = !types;
    const bool taken = typingKey(press);
    midWord_ = false;
    if (!taken && !types) handleKey(press);
    if (taken && leavesField(press)) break;  // where it leads is known once this frame is drawn
  }
}

void Session::togglePresenting() {
  if (!job_) return;
  touched();
  presenting_.on() ? presenting_.end(state_, playback_) : presenting_.begin(state_, playback_);
  window_.setFullScreen(presenting_.on());
  framesDue_ = 5;
}

void Session::presentingKey(int key) {
  switch (Presenting::actOf(key)) {
    case Presenting::Act::Next:
      return presenting_.next(playback_);
    case Presenting::Act::Back:
      return presenting_.back(playback_);
    case Presenting::Act::Dark:
      return presenting_.toggleDark();
    case Presenting::Act::End:
      return togglePresenting();
    case Presenting::Act::None:
      return;
  }
}

Meets Session::meets() const {
  return [this](const Ray& ray) { return job_->picker.pick(ray, frameNow()); };
}

void Session::toggleWalking() {
  touched();
  if (walking_) {
    walking_.reset();
    state_.easeTo(beforeWalk_);
    return;
  }
  beforeWalk_ = state_.camera;
  state_.followStages = false;
  walking_.emplace(job_->model, job_->scene);
  walking_->begin(meets());
  state_.easeTo(walking_->camera());
}

bool Session::walkingKey(const KeyPress& press) {
  constexpr float kStep = 0.4f;
  constexpr double kTurn = 0.175;  // 10 degrees
  if (press.modifiers & (GLFW_MOD_CONTROL | GLFW_MOD_ALT | GLFW_MOD_SUPER)) return false;
  const bool shift = press.modifiers & GLFW_MOD_SHIFT;
  const int ahead = (press.key == GLFW_KEY_UP) - (press.key == GLFW_KEY_DOWN);
  const int right = (press.key == GLFW_KEY_RIGHT) - (press.key == GLFW_KEY_LEFT);
  const int up = (press.key == GLFW_KEY_PAGE_UP) - (press.key == GLFW_KEY_PAGE_DOWN);
  if (press.key == GLFW_KEY_ESCAPE || press.key == GLFW_KEY_W) {
    toggleWalking();
    return true;
  }
  if (ahead != 0 && shift)
    walking_->look(0, ahead * kTurn);
  else if (ahead != 0)
    walking_->step(float(ahead) * kStep, 0, meets());
  else if (right != 0 && shift)
    walking_->step(0, float(right) * kStep, meets());
  else if (right != 0)
    walking_->look(right * kTurn, 0);
  else if (up != 0)
    walking_->climb(up, meets());
  else if (press.key == GLFW_KEY_F)
    walking_->toWindow(meets(), playback_.time());
  else
    return false;
  state_.easeTo(walking_->camera());
  return true;
}

void Session::handleKey(const KeyPress& press) {
  if (presenting_.on()) return presentingKey(press.key);
  if (job_ && walking_ && walkingKey(press)) return;
  if (job_ && moveKey(press)) return;
  if (press.modifiers & (GLFW_MOD_CONTROL | GLFW_MOD_ALT | GLFW_MOD_SUPER)) return;
  // An example that plays by itself only stops at the keys that stop.
  if (touched() && (press.key == GLFW_KEY_SPACE || press.key == GLFW_KEY_ESCAPE)) return;
  if (press.key == GLFW_KEY_ESCAPE) {
    if (levelEdit_.open())
      levelEdit_.close();
    else if (titleEdit_.open())
      titleEdit_.close();
    else if (sheets_.backOut())
      return;
    else if (playback_.playing())
      playback_.pause();
    else
      state_.backOut();
    return;
  }
  if (!job_) {
    if (press.key == GLFW_KEY_H || press.key == GLFW_KEY_SLASH) state_.toggleTab(Tab::Keys);
    return;
  }
  if (levelKey(press) || sheetKey(press.key)) return;
  if (!playbackKey(press) && !showKey(press.key)) viewKey(press.key);
}

bool Session::moveKey(const KeyPress& press) {
  constexpr double kTurn = 0.0873;  // 5 degrees
  constexpr float kMove = 0.05f;    // of the sheet
  constexpr double kNearer = 0.87;
  const bool shift = press.modifiers & GLFW_MOD_SHIFT, control = press.modifiers & GLFW_MOD_CONTROL;
  const int across = (press.key == GLFW_KEY_RIGHT) - (press.key == GLFW_KEY_LEFT);
  const int up = (press.key == GLFW_KEY_UP) - (press.key == GLFW_KEY_DOWN);
  const bool nearer = press.key == GLFW_KEY_EQUAL || press.key == GLFW_KEY_KP_ADD;
  const bool further = press.key == GLFW_KEY_MINUS || press.key == GLFW_KEY_KP_SUBTRACT;
  const bool arrow = (across || up) && shift != control;
  if (!arrow && !nearer && !further) return false;
  touched();
  const glm::vec2 centre = layoutNow().drawing.centre();
  if (nearer || further)
    nearerBy(centre, nearer ? kNearer : 1 / kNearer);
  else if (shift)
    turnBy(across * kTurn, up * kTurn);
  else
    moveBy({-float(across) * kMove, float(up) * kMove});
  return true;
}

bool Session::levelKey(const KeyPress& press) {
  const int up = (press.key == GLFW_KEY_PAGE_UP) - (press.key == GLFW_KEY_PAGE_DOWN);
  if (press.key == GLFW_KEY_R) {
    setLevel(double(state_.switches.levelPlaneAt));
    levelEdit_.begin(double(state_.switches.levelPlaneAt));
    return true;
  }
  if (!up) return false;
  const bool shift = press.modifiers & GLFW_MOD_SHIFT;
  const double step = shift ? 0.001 : job_->model.job.walls.course();
  // The first press only shows it.
  const double by = state_.switches.levelPlane ? up * step : 0;
  setLevel(std::round((double(state_.switches.levelPlaneAt) + by) * 10000) / 10000);
  return true;
}

bool Session::playbackKey(const KeyPress& press) {
  if (press.modifiers & GLFW_MOD_SHIFT) {
    // As elsewhere, with Shift the step is a finer one.
    if (press.key == GLFW_KEY_PERIOD) return stepPiece(true);
    if (press.key == GLFW_KEY_COMMA) return stepPiece(false);
  }
  switch (press.key) {
    case GLFW_KEY_SPACE:
      playback_.toggle();
      return true;
    case GLFW_KEY_RIGHT:
      playback_.stepForward();
      return true;
    case GLFW_KEY_LEFT:
      playback_.stepBack();
      return true;
    case GLFW_KEY_PERIOD:
      if (const auto end = model::nextCourseEnd(job_->facts.courseSteps, playback_.time()))
        playback_.goTo(*end);
      return true;
    case GLFW_KEY_COMMA:
      if (const auto end = model::courseEndBefore(job_->facts.courseSteps, playback_.time()))
        playback_.goTo(*end);
      return true;
    case GLFW_KEY_RIGHT_BRACKET:
      playback_.goTo(nextDayEnd(job_->model.programme, playback_.time()));
      return true;
    case GLFW_KEY_LEFT_BRACKET:
      playback_.goTo(dayEndBefore(job_->model.programme, playback_.time()));
      return true;
    case GLFW_KEY_HOME:
      playback_.goTo(0);
      return true;
    case GLFW_KEY_END:
      playback_.goTo(playback_.stageCount());
      return true;
    case GLFW_KEY_UP:
      playback_.faster();
      return true;
    case GLFW_KEY_DOWN:
      playback_.slower();
      return true;
    case GLFW_KEY_O:
      playback_.setRound(Round((int(playback_.round()) + 1) % kRoundCount));
      return true;
    case GLFW_KEY_Z:
      playBy(Pace((int(playback_.pace()) + 1) % kPaceCount));
      return true;
    default:
      return false;
  }
}

bool Session::showKey(int key) {
  Overlays& overlays = state_.overlays;
  switch (key) {
    case GLFW_KEY_L:
      overlays.levels = !overlays.levels;
      return true;
    case GLFW_KEY_T:
      overlays.lines = !overlays.lines;
      return true;
    case GLFW_KEY_C:
      overlays.corners = !overlays.corners;
      return true;
    case GLFW_KEY_B:
      overlays.settingOut = !overlays.settingOut;
      return true;
    case GLFW_KEY_U:
      overlays.gaugeRods = !overlays.gaugeRods;
      return true;
    case GLFW_KEY_X:
      overlays.cutUnits = !overlays.cutUnits;
      return true;
    case GLFW_KEY_E:
      overlays.readings = !overlays.readings;
      return true;
    case GLFW_KEY_I:
      state_.readFrom(nextSetUp(job_->model.job, state_.standing), job_->model.job);
      return true;
    case GLFW_KEY_J:
      if (job_->model.job.site.benchMark) state_.placing = !state_.placing;
      return true;
    case GLFW_KEY_D:
      overlays.dimensions = !overlays.dimensions;
      return true;
    case GLFW_KEY_G:
      state_.switches.seeThrough = nextOf(state_.switches.seeThrough);
      return true;
    case GLFW_KEY_Q:
    case GLFW_KEY_F5:
      togglePresenting();
      return true;
    case GLFW_KEY_N:
      state_.switches.ghosts = !state_.switches.ghosts;
      return true;
    case GLFW_KEY_S:
      state_.toggleSection(job_->model, job_->scene);
      return true;
    case GLFW_KEY_M:
      state_.toggleMeasuring();
      return true;
    case GLFW_KEY_Y:
      state_.toggleTab(Tab::Dates);
      return true;
    case GLFW_KEY_H:
    case GLFW_KEY_SLASH:
      state_.toggleTab(Tab::Keys);
      return true;
    default:
      return false;
  }
}

bool Session::viewKey(int key) {
  const SheetLayout layout = layoutNow();
  const bool elsewhere = (key >= GLFW_KEY_1 && key <= GLFW_KEY_9) || key == GLFW_KEY_V ||
                         key == GLFW_KEY_P || key == GLFW_KEY_F;
  if (elsewhere) {
    walking_.reset();
    wantedView_.reset();
  }
  if (key >= GLFW_KEY_1 && key <= GLFW_KEY_9) {
    state_.goToView(viewOrder()[size_t(key - GLFW_KEY_1)], job_->scene, layout);
    return true;
  }
  if (key == GLFW_KEY_V) {
    goToOwnView();
    return true;
  }
  if (key == GLFW_KEY_W) {
    toggleWalking();
    return true;
  }
  if (key == GLFW_KEY_P) {
    Camera camera = state_.camera;
    camera.parallel = !camera.parallel;
    state_.easeTo(camera);
    return true;
  }
  if (key == GLFW_KEY_F) {
    if (state_.selected != kNothing) {
      const ElementRange& range = job_->scene.elements[state_.selected];
      state_.frame(range.low, range.high, layout);
    } else {
      state_.frameBuilding(job_->scene, layout);
    }
    return true;
  }
  return false;
}

}  // namespace viewer
