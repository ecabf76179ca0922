// Where the names beside a gauge rod stand: in one column, level by level, none over another. Pure
// arithmetic, no drawing.
#pragma once

#include <optional>
#include <vector>

#include "viewer/overlays/box.h"

namespace viewer {

struct RodName {
  float y = 0;       // of the level on the sheet
  float width = 0;   // of the text, pixels
  int priority = 0;  // lower ones yield first where there is no room for all
};

struct RodNameRoom {
  Box sheet;               // the column stays inside
  std::vector<Box> taken;  // and clear of these
  float line = 16;         // height of a line of text with what parts it from the next
  float gap = 4;           // from what is taken
  float most = 240;        // the column's greatest width
  float least = 90;        // with less there is none
};

struct PlacedRodName {
  size_t name = 0;
  Box box;  // of the text; no wider than its column
};

// `names` from top to bottom, all on the sheet. The column begins at `edge` and goes right (`way`
// 1) or left (-1). Those that are given up for want of room are the least important, of equals the
// lower ones.
std::vector<PlacedRodName> placeRodNames(const std::vector<RodName>& names, float edge, float way,
                                         const RodNameRoom& room);

}  // namespace viewer
