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
  std::vector<std::string> names;  // all that lie at this height, the most important first
  std::string lift;                // that ends there too, when it is not the only name
  std::string where;               // the openings, walls or corners, where one name stands for all
  int priority = 0;                // floors and the like over levels of single openings
  std::vector<size_t> lines;       // of the schedule, that lie there, without that lift
};

// The schedule, with its lifts or without, equal levels (to a millimetre) joined, lowest first.
std::vector<RodMark> rodMarks(const std::vector<model::ScheduledLevel>& schedule, bool lifts);
// How many those are.
size_t countHeights(const std::vector<model::ScheduledLevel>& schedule, bool lifts);

// In elevations the drawing's own scale, to the pixel; elsewhere the whole of `low`..`high` on the
// rod. `height` is the window's.
RodScale rodScale(const Camera& camera, const Box& rod, float height, double low, double high);

}  // namespace viewer
