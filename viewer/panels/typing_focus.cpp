#include "viewer/panels/typing_focus.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <utility>

namespace viewer {

bool TypingFocus::takeEnter() { return std::exchange(entered_, false); }

void TypingFocus::goTo(int field) {
  wish_ = at_ = field;
  asked_ = false;
  ++tries_;
}

void TypingFocus::leave() {
  wish_ = at_ = 0;
  entered_ = false;
  ++tries_;  // the widget that has the keyboard is gone
}

bool TypingFocus::field(int number, const char* hint, std::string& text, float width, bool& left) {
  ImGui::PushID(number);
  ImGui::PushID(tries_);
  // Asked for until it is had: the click that brought the field may take the keyboard away again.
  // In every other frame, since the widget drops the letters of a frame in which it is asked for:
  // it has them for itself once it has the keyboard without having been asked for again.
  const bool wished = wish_ == number;
  const bool ask = wished && !asked_;
  if (ask) ImGui::SetKeyboardFocusHere();
  if (wished) {
    asked_ = ask;
    met_ = true;
  }
  ImGui::SetNextItemWidth(width);
  const bool changed =
      ImGui::InputTextWithHint("##field", hint, &text, ImGuiInputTextFlags_AutoSelectAll);
  if (ImGui::IsItemActive()) {
    at_ = number;
    if (wished && !ask) wish_ = 0;
  }
  left = ImGui::IsItemDeactivatedAfterEdit();
  ImGui::PopID();
  ImGui::PopID();
  return changed;
}

void TypingFocus::end() {
  // A field that is not there cannot be typed into.
  if (!met_) wish_ = 0;
}

}  // namespace viewer
