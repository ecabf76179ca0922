// Where the fixed things of the sheet stand: tape, rod, title block, captions, tabs.
#pragma once

#include "viewer/overlays/box.h"

namespace viewer {

struct SheetLayout {
  Box sheet;       // the whole window
  Box tabs;        // words down the left edge
  Box captions;    // stage name and what is done; its height is the most it may take
  Box tape;        // the tape's body; the hook and the diamonds stand a little above it
  Box rod;         // the rod's body; its labels stand to the left, its pointer to the right
  Box titleBlock;  // bottom right
  Box drawing;     // what is left for the building
};

// `unit` is the size of one pixel of a plain screen. Parts keep their size and the drawing takes
// what is left; below about 900 x 560 units the title block shrinks before the drawing vanishes.
// `pulledOut` is how far a sheet stands in from the left: captions and drawing step aside for it.
// Without a rod the title block has the corner to itself; with one it stands beside the rod, which
// is as tall as the sheet so that every level of an elevation is on it.
SheetLayout layOutSheet(float width, float height, float unit, float pulledOut = 0,
                        bool withRod = true);

}  // namespace viewer
