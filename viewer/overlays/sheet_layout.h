// Where the fixed things of the sheet stand: tape, rod, title block, captions, levels, tabs.
#pragma once

#include <functional>

#include "viewer/overlays/box.h"
#include "viewer/overlays/level_plan.h"

namespace viewer {

// What is laid over the building, as far as it takes room.
struct SheetParts {
  bool captions = true;
  bool titleBlock = true;
  bool tape = true;
  bool rod = true;
  bool levels = false;   // the column of levels beside the building
  size_t heights = 0;    // different levels that are named, each on a line of its own
  size_t withLifts = 0;  // the same with the tops of lifts, which yield where there is no room
  // Pixels that the tallest caption of the job takes at a width; without it, three lines or so.
  std::function<float(float width)> captionHeight;
};

// How far a sheet of the window stands in from the left, units.
inline constexpr float kSheetWidth = 410;

struct SheetLayout {
  Box sheet;            // the whole window
  Box tabs;             // words down the left edge
  Box captions;         // stage name and what is done; its height is the most it may take
  Box tape;             // the tape's body; the hook and the diamonds stand a little above it
  Box rod;              // the rod's body; its pointer stands to the right
  Box titleBlock;       // bottom right
  Box levels;           // names and values of levels beside the drawing; no width without them
  Box levelsLeft;       // a second column of them left of the drawing; no width when not needed
  LevelPlan levelPlan;  // how they go into the two
  bool lifts = false;   // those levels are named too
  Box drawing;          // what is left for the building
  bool levelsGiveWay = false;  // a sheet stands in where the column of levels leaves no room for it
};

// `unit` is the size of one pixel of a plain screen. Parts keep their size and the drawing takes
// what is left; on small sheets title block, rod and levels shrink before the drawing vanishes.
// `pulledOut` is how far a sheet stands in from the left: captions and drawing step aside for it.
// From right to left stand the rod, as tall as the sheet so that every level of an elevation is on
// it, then one strip with the levels and under them the title block, then the drawing.
SheetLayout layOutSheet(float width, float height, float unit, float pulledOut = 0,
                        const SheetParts& parts = {});

}  // namespace viewer
