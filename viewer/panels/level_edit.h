// The level plane's height while it is being typed, beside the rod.
#pragma once

#include <optional>
#include <string>

#include "model/settingout/setting_out.h"
#include "viewer/overlays/rod_layout.h"
#include "viewer/overlays/sheet_layout.h"

namespace viewer {

class LevelEdit {
 public:
  void begin(double level);
  bool open() const { return open_; }
  bool fresh() const { return open_ && fresh_; }
  void close() { open_ = false; }
  const Box& box() const { return box_; }
  // The Enter key, told from outside as a title field's is.
  void enter() { entered_ = open_; }
  // Inside a Dear ImGui frame, while open. The level, once, when what was typed is one.
  std::optional<double> draw(const model::SettingOut& settingOut, const SheetLayout& layout,
                             const RodScale& scale);

 private:
  void problem() const;

  bool open_ = false, fresh_ = false, entered_ = false;
  char text_[64] = "";
  double at_ = 0;  // where it stands
  std::string problem_;
  int tries_ = 0;
  Box box_;
};

}  // namespace viewer
