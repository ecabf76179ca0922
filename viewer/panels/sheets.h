// The sheets that slide in from the left, one at a time, and the word tabs that fetch them.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/problems.h"
#include "viewer/frame.h"
#include "viewer/job_loader.h"
#include "viewer/overlays/sheet_layout.h"
#include "viewer/panels/book_entry.h"
#include "viewer/panels/dates_entry.h"
#include "viewer/panels/reading_entry.h"
#include "viewer/panels/typing_focus.h"
#include "viewer/playback.h"
#include "viewer/view_state.h"

namespace viewer {

// How far the sheets are in, and what is typed into them.
class SheetsState {
 public:
  // Slides towards what `wanted` says; real seconds. `room` is what lies left of the title block,
  // units.
  void advance(Tab wanted, double seconds, float room);
  bool sliding() const { return sliding_; }
  // Eased, in pixels.
  float pulledOut(float unit) const;
  // Of the sheet that is seen, units: a level book has many columns.
  float width() const { return width_; }
  // The tab whose sheet is seen, also while it slides out.
  Tab shown() const { return shown_; }

  // True while letters belong to what is typed on a sheet although no field has the keyboard yet.
  bool fresh() const { return readingFocus.fresh() || bookFocus.fresh(); }
  // A reading can be typed, so a click on the building names its point.
  bool typesReading() const { return shown_ == Tab::Readings && entry.open(); }
  // The point of the reading, from a place that was pointed at.
  void pointAt(const ReadyJob& job, const model::Vec3& place);
  // The Enter key in a field; false when no sheet waits for it.
  bool enter();
  // The Tab key in a field: to the next, or back; false elsewhere.
  bool tab(bool back);
  bool takesTab() const { return typesReading() || shown_ == Tab::Book; }
  // The keys up and down in a field of the level book; false elsewhere.
  bool moveRow(int by);
  // The Escape key: lets go of the field in the level book, or takes the line for readings away.
  // False when there is neither.
  bool backOut();
  // Every text that is typed or has come from a level book, for lettering.
  std::vector<std::string> texts() const;

  char filter[96] = "";
  bool byStage = false;
  bool loading = false;       // what to load out is shown in place of quantities
  int course = 1;             // as gauge rods number them
  size_t courseCorner = 0;    // where that course is looked for
  bool noCourse = false;      // there was none
  bool wantsOwnView = false;  // asked for on the sheet of views
  std::string viewNotice;     // what came of keeping a stage's view
  DatesEntry dates;
  ReadingEntry entry;
  TypingFocus readingFocus;
  BookEntry book;
  TypingFocus bookFocus;
  std::optional<Pace> wantedPace;  // chosen on a sheet
  bool saved = false;  // the job's own files have just been written: it is to be read again

 private:
  Tab shown_ = Tab::None;
  float width_ = kSheetWidth;
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

// Brings the sheet of readings with the line in which one is typed.
void beginReading(SheetsState& sheets, ViewState& state, const ReadyJob& job,
                  const std::string& path);
// Brings the level book, ready to be typed into, or takes it away.
void toggleBook(SheetsState& sheets, ViewState& state);

// The words down the left edge; exposed for tests. Box of tab `index` (0 = Stages).
Box tabBox(const SheetLayout& layout, float unit, int index);

}  // namespace viewer
