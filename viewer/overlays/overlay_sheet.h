// What the single overlays share while one frame is drawn. Private to this folder and the panels.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "viewer/overlays/draw_overlays.h"
#include "viewer/overlays/job_facts.h"
#include "viewer/overlays/label_layout.h"
#include "viewer/overlays/pen.h"
#include "viewer/overlays/rod_layout.h"
#include "viewer/overlays/sheet_layout.h"
#include "viewer/overlays/tape_layout.h"

namespace viewer {

struct LabelText {
  std::string text;
  unsigned rgb = ink::kInk;
  float opacity = 1;
  bool leader = true;  // draw one when the label had to step aside
  Cut cut = Cut::Text;
  bool besideOnly = false;  // left out when it had to step aside
};

struct OverlaySheet {
  const model::Model& model;
  const Scene& scene;
  const Frame& frame;
  const OverlayOptions& options;
  Pen pen;
  SheetLayout layout;
  bool levelsShown = false;  // the levels belong to the building as well as to the rod
  bool rodShown = false;
  std::vector<Box> taken;  // by what has a fixed place
  std::vector<LabelRequest> requests;
  std::vector<LabelText> texts;  // one for each request
  std::vector<Box> lines;        // pieces of strings and dimension lines; texts keep clear of them
  std::vector<Box> avoid;        // roofs of standing buildings: texts read badly there
  std::vector<Box> furniture;    // captions, tape and title block, where they are shown
  std::vector<Box> over;         // what hides the drawing: these, the rod, papers under levels

  double aspect() const { return double(layout.sheet.width() / layout.sheet.height()); }
  // Pixels; nothing behind the eye.
  std::optional<glm::vec2> onSheet(const glm::vec3& local) const;
  // True where a section has taken away what is there.
  bool cutAway(const glm::vec3& local) const;
  // True when something that stands is in front of the point.
  bool hidden(const glm::vec3& local) const;
  // A line in space, dimmed where hidden; `parts` pieces are looked at.
  void spaceLine(const glm::vec3& a, const glm::vec3& b, unsigned rgb, float width,
                 int parts) const;
  // At a place that something fixed has taken.
  bool takenAt(const glm::vec2& at) const;
  void ask(const LabelRequest& request, const LabelText& text);
  // Small boxes along a line of the sheet, so that no text is put on it.
  void keepClear(const glm::vec2& from, const glm::vec2& to);
};

// A letter that has found its place.
struct CornerRing {
  std::string letter;
  glm::vec2 at{0, 0}, corner{0, 0};  // pixels: of the ring, of what it letters
  float radius = 0;
  bool behind = false;  // the building hides the corner
  bool aside = false;   // so far off that a line joins the two
};

// The first of the drawing's corners, from the lower left on, that nothing has taken; nothing when
// all are.
std::optional<Box> freeCorner(const OverlaySheet& sheet, const glm::vec2& size);

// The fixed furniture.
void drawCaptions(OverlaySheet& sheet);
void drawTitleBlock(OverlaySheet& sheet);
void drawTape(OverlaySheet& sheet);
void drawRod(OverlaySheet& sheet);
// What the words of the level plane take beside the rod, while it is shown.
std::optional<Box> rodPointerCard(const OverlaySheet& sheet);
// Over the building.
// Those that are seen first, nearest first; hidden ones only where no other stands. They take
// their places before dimensions and names do.
std::vector<CornerRing> placeCornerLetters(OverlaySheet& sheet);
void drawCornerLetters(const OverlaySheet& sheet, const std::vector<CornerRing>& rings);
// Where standing buildings lie on the sheet, for `avoid`.
std::vector<Box> standingBuildings(const OverlaySheet& sheet);
void drawDimensions(OverlaySheet& sheet, const std::vector<CornerRing>& rings);
void drawLevelMarks(OverlaySheet& sheet);
void drawStringLines(OverlaySheet& sheet, bool named = true);
// The line that the course under way is laid to.
void drawCourseLines(OverlaySheet& sheet);
void drawScaleBar(OverlaySheet& sheet);
void drawInstruments(OverlaySheet& sheet);
// A gauge rod beside every corner.
void drawGaugeRods(OverlaySheet& sheet, const std::vector<CornerRod>& rods);
// What was read, with its deviations; the surfaces read as a heat map.
void drawReadings(OverlaySheet& sheet, const model::AsBuilt& asBuilt);
// What the marks on units that are not whole mean, and how many of each stand.
void drawCutUnits(OverlaySheet& sheet);
// Boards' marks, tape checks, offset lines and limits: in plan the setting-out drawing, elsewhere
// quieter.
void drawSettingOut(OverlaySheet& sheet, const model::SetOutLines& lines);
// A part of it: the permission's and agreements' limits.
void drawLimits(OverlaySheet& sheet, const model::SetOutLines& lines);

// Where the words for a client stand: along the foot of the sheet.
Box clientBox(const Box& sheet);
void drawClientWords(OverlaySheet& sheet);

// The sheet of a job with these overlays. Words get the room that the longest of any stage need, so
// that the building keeps its place; with `stage` only what those of that one need.
SheetLayout sheetOf(const model::Model& model, const Overlays& overlays, float width, float height,
                    float unit, float pulledOut = 0, std::optional<size_t> stage = {});

// The levels that are named, lowest first: all of them beside the building, but lifts only where
// there is room; for the rod alone, where it only lists, lifts and those of sills and heads are
// left to the elevations.
std::vector<RodMark> shownMarks(const OverlaySheet& sheet);

// What the pointer is held against too.
TapeLayout tapeOf(const model::Model& model, const SheetLayout& layout, double time,
                  const Pen& pen);
RodScale rodScaleOf(const model::Model& model, const Frame& frame, const SheetLayout& layout);
// Where the window has the word for a pace, over the middle of the tape; nothing where the tape is
// too short for it beside date and scale bar.
std::optional<Box> paceBox(const SheetLayout& layout, float unit, Pace pace);
// Rows of the title block, from 0; the second last argument counts them.
enum class TitleRow { Job, Stage, View, Units, BenchMark, Count };
Box titleRow(const SheetLayout& layout, TitleRow row);

}  // namespace viewer
