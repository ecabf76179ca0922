// Which of several fields has the keyboard, and which is to have it next.
#pragma once

#include <string>

namespace viewer {

// Fields are numbered by whoever has them, from 1; 0 is none.
class TypingFocus {
 public:
  // The Enter key, told from outside: one that goes down and up between two frames is unknown to
  // the widgets.
  void enter() { entered_ = true; }
  bool takeEnter();
  // The field to be typed into from the next frame on. Every go is a fresh widget, its text marked
  // to be typed over.
  void goTo(int field);
  // The keyboard is asked for and not yet had.
  bool fresh() const { return wish_ != 0; }
  int wish() const { return wish_; }
  // The field typed into last.
  int at() const { return at_; }
  // Nothing is typed into any more.
  void leave();

  // Inside a Dear ImGui frame, between begin() and end(): one line of text. True when it has just
  // been changed. `left` is true when it has just lost the keyboard after a change.
  void begin() { met_ = false; }
  bool field(int number, const char* hint, std::string& text, float width, bool& left);
  void end();

 private:
  int wish_ = 0, at_ = 0, tries_ = 0;
  bool entered_ = false, met_ = false, asked_ = false;
};

}  // namespace viewer
