// The rod: height laid out down the right of the sheet. Pure arithmetic, no drawing.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/model.h"
#include "viewer/camera.h"
#include "viewer/overlays/box.h"

namespace viewer {

// Levels against pixels; straight, y down.
struct RodScale {
  double level = 0;  // that stands at y
  float y = 0;
  double perMetre = 50;  // pixels

  float yAt(double at) const { return float(double(y) - (at - level) * perMetre); }
  double levelAt(float at) const { return level + double(y - at) / perMetre; }
};

// A scheduled level, or several at one height.
struct RodMark {
  double level = 0;
  std::string name;  // "sill, kitchen window"; "3 sills" when several share it
  int priority = 0;  // floors and the like over levels of single openings
};

// One text of a column of texts that speak of heights on the screen.
struct RodLabel {
  size_t mark = 0;
  float trueY = 0;  // what it speaks of
  float y = 0;      // middle of the text, moved aside where it must be
};

struct ColumnItem {
  float y = 0;
  int priority = 0;
};

// From a height on the sheet down to another.
struct Reach {
  float from = 0, to = 0;
};

// Texts beside heights, top first, at least `textHeight` apart and within `texts`, moved in all as
// little as that allows; items outside `seen` are left out, and of the rest those of low priority
// when there is no room for all.
std::vector<RodLabel> layOutColumn(const std::vector<ColumnItem>& items, float textHeight,
                                   const Reach& seen, const Reach& texts);

// The schedule with equal levels (to a millimetre) joined, lowest first.
std::vector<RodMark> rodMarks(const std::vector<model::ScheduledLevel>& schedule);

// In elevations the drawing's own scale, to the pixel; elsewhere the whole of `low`..`high` on the
// rod. `height` is the window's.
RodScale rodScale(const Camera& camera, const Box& rod, float height, double low, double high);

// layOutColumn for the marks that are within the rod; their texts stay above `textsTo`.
std::vector<RodLabel> layOutRod(const std::vector<RodMark>& marks, const RodScale& scale,
                                const Box& rod, float textHeight, float textsTo);

}  // namespace viewer
