// Places labels by the points they speak of: never over each other, never outside the sheet.
#pragma once

#include <vector>

#include "viewer/overlays/box.h"

namespace viewer {

struct LabelPlace {
  glm::vec2 anchor{0, 0}, towards{1, 0};
};

struct LabelRequest {
  glm::vec2 anchor{0, 0};   // what it speaks of
  glm::vec2 size{0, 0};     // of the text
  glm::vec2 towards{1, 0};  // the side it would rather stand on; zero: over the anchor itself
  int priority = 0;         // higher ones choose first
  // Never left out while the sheet has room for it anywhere: rather than that it stands on what
  // labels avoid, then beyond reach, then over lines.
  bool must = false;
  // The anchors are points of a line square to `towards`: it stands wholly on one side of that.
  bool besideLine = false;
  std::vector<LabelPlace> others = {};  // that do as well, best first: other points, other sides
};

struct PlacedLabel {
  bool shown = false;      // false when there was no room within reach
  Box box;                 // when shown
  bool leader = false;     // it stands off so far that a line must join it to its anchor
  glm::vec2 anchor{0, 0};  // the one that it stands by
};

struct LabelRules {
  Box sheet;               // labels stay inside
  std::vector<Box> over;   // what lies over the drawing: nothing under it is spoken of
  std::vector<Box> taken;  // and clear of these
  std::vector<Box> lines;  // and of these, but for those that must be shown
  std::vector<Box> avoid;  // and of these too where there is room elsewhere
  float gap = 3;           // between a label and anything else
  float near = 10;         // distance at which a label belongs to its anchor without a line
  float reach = 160;       // no label stands further off
};

// One result for each request, in the same order. Equal input gives equal output; earlier requests
// go first among equal priorities. A label whose anchors are all outside the sheet or
// under what lies over it is not shown.
std::vector<PlacedLabel> layOutLabels(const std::vector<LabelRequest>& requests,
                                      const LabelRules& rules);

// The point of a label's edge from which its leader starts.
glm::vec2 leaderStart(const Box& label, const glm::vec2& anchor);

}  // namespace viewer
