// The sheets that slide in from the left, one at a time, and the word tabs that fetch them.
#pragma once

#include <string>

#include "model/problems.h"
#include "viewer/frame.h"
#include "viewer/job_loader.h"
#include "viewer/overlays/sheet_layout.h"
#include "viewer/playback.h"
#include "viewer/view_state.h"

namespace viewer {

// How far the sheets are in, and what is typed into them.
class SheetsState {
 public:
  static constexpr float kWidth = kSheetWidth;  // units

  // Slides towards what `wanted` says; real seconds.
  void advance(Tab wanted, double seconds);
  bool sliding() const { return sliding_; }
  // Eased, in pixels.
  float pulledOut(float unit) const;
  // The tab whose sheet is seen, also while it slides out.
  Tab shown() const { return shown_; }

  char filter[96] = "";
  bool byStage = false;

 private:
  Tab shown_ = Tab::None;
  double out_ = 0;  // 0 hidden .. 1 in
  bool sliding_ = false;
};

struct SheetsInput {
  ViewState& state;
  Playback& playback;
  const model::Problems& problems;
  const std::string& path;
  const ReadyJob* job;  // null until a good file has been read
  const Frame& frame;
  const SheetLayout& layout;
  bool reading = false;  // a file is being read and it takes a while
  bool gone = false;     // the file is no longer there
};

// Tabs, the open sheet and the small notices. Inside a Dear ImGui frame.
void drawSheets(SheetsState& sheets, SheetsInput& input);

// The words down the left edge; exposed for tests. Box of tab `index` (0 = Stages).
Box tabBox(const SheetLayout& layout, float unit, int index);

}  // namespace viewer
