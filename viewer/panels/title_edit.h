// A field of the title block while it is being typed into.
#pragma once

#include <string>

#include "model/job/job.h"
#include "viewer/overlays/sheet_layout.h"
#include "viewer/panels/change_job_file.h"

namespace viewer {

class TitleEdit {
 public:
  // Opens the field of the title block's row under a point; false when that row has none.
  bool openAt(const glm::vec2& at, const model::Job& job, const std::string& path,
              const SheetLayout& layout);
  bool open() const { return field_ != TitleField::None; }
  bool fresh() const { return open() && fresh_; }
  // What is typed so far; empty when closed.
  std::string text() const { return open() ? text_ : ""; }
  void close();
  // Where it lies, its problem included; clicks there belong to it.
  const Box& box() const { return box_; }
  // The Enter key: told from outside, for one that goes down and up between two frames is unknown
  // to the widgets.
  void enter() { entered_ = open(); }
  // Inside a Dear ImGui frame. After enter() saves and closes, or shows beside the field what is
  // wrong.
  // True when the file has just been saved.
  bool draw(const std::string& path, const SheetLayout& layout);

 private:
  void begin(TitleField field, const std::string& text, const std::string& level);
  void fields(const Box& row);
  void problem(const SheetLayout& layout);

  TitleField field_ = TitleField::None;
  char text_[256] = "", level_[32] = "";
  std::string problem_;
  Box box_;
  bool entered_ = false;
  int tries_ = 0;       // each try is a fresh widget, its text marked to be typed over
  bool fresh_ = false;  // has not had the keyboard yet
};

}  // namespace viewer
