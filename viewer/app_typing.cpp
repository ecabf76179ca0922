// What is typed on the sheets: readings and the level book, and how the window follows.
#include <GLFW/glfw3.h>

#include <utility>

#include "viewer/app_session.h"

namespace viewer {

bool Session::freshField() const {
  return titleEdit_.fresh() || levelEdit_.fresh() || sheets_.fresh();
}

bool Session::typing() const {
  return titleEdit_.open() || levelEdit_.open() || sheets_.fresh() || midWord_ ||
         ImGui::GetIO().WantTextInput;
}

bool Session::leavesField(const KeyPress& press) {
  switch (press.key) {
    case GLFW_KEY_ENTER:
    case GLFW_KEY_KP_ENTER:
    case GLFW_KEY_TAB:
    case GLFW_KEY_UP:
    case GLFW_KEY_DOWN:
    case GLFW_KEY_ESCAPE:
      return true;
    default:
      return press.modifiers & GLFW_MOD_CONTROL;
  }
}

void Session::giveTab() const {
  // The sheets do it themselves: the widgets know nothing of a key that is up again by now.
  ImGui::GetIO().KeyMap[ImGuiKey_Tab] = sheets_.takesTab() ? -1 : GLFW_KEY_TAB;
}

bool Session::typingKey(const KeyPress& press) {
  const bool enter = press.key == GLFW_KEY_ENTER || press.key == GLFW_KEY_KP_ENTER;
  if (enter && (titleEdit_.open() || levelEdit_.open())) {
    titleEdit_.enter();
    levelEdit_.enter();
    return true;
  }
  if (enter && typing() && sheets_.enter()) return true;
  if (press.key == GLFW_KEY_TAB && typing() && sheets_.tab(press.modifiers & GLFW_MOD_SHIFT))
    return true;
  const int down = (press.key == GLFW_KEY_DOWN) - (press.key == GLFW_KEY_UP);
  if (down != 0 && press.modifiers == 0 && ImGui::GetIO().WantTextInput && sheets_.moveRow(down))
    return true;
  const bool save = press.key == GLFW_KEY_S && press.modifiers == GLFW_MOD_CONTROL;
  if (!save || !job_ || sheets_.shown() != Tab::Book) return false;
  sheets_.book.save(path_, bookSettings(job_->model.job));
  return true;
}

bool Session::sheetKey(int key) {
  if (key == GLFW_KEY_A) {
    beginReading(sheets_, state_, *job_, path_);
    return true;
  }
  if (key != GLFW_KEY_K) return false;
  toggleBook(sheets_, state_);
  return true;
}

void Session::followSaved() {
  if (!std::exchange(sheets_.saved, false)) return;
  // What was typed a moment ago appears without a notice of reading.
  watch_.accept();
  for (WatchFile& file : watchReadings_) file.accept();
  ownSave_ = true;
  framesDue_ = 3;
  loader_.start(window_.now());
}

bool Session::mayClose() {
  if (sheets_.book.mayClose()) return true;
  window_.stayOpen();
  state_.tab = Tab::Book;
  framesDue_ = 3;
  return false;
}

}  // namespace viewer
