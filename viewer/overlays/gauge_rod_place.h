// Where the gauge rods stand in the view: beside their corners, and which one is the nearest.
// Private to this folder.
#pragma once

#include <optional>
#include <vector>

#include "viewer/overlays/job_facts.h"
#include "viewer/overlays/overlay_sheet.h"

namespace viewer {

// A rod as it stands at this moment.
struct StandingRod {
  const model::GaugeRod* rod = nullptr;
  bool asBuilt = false;
  bool stands = false;  // what it stands on is there
  glm::vec2 at{0, 0};   // local, on plan
  float half = 0;       // pixels: half its width on the sheet
  float way = 1;        // 1: it stands right of its corner on the sheet, -1: left
  float seen = 0;       // share of it that is in the drawing with nothing in front
  float depth = 0;      // metres before the eye

  glm::vec3 point(double level) const { return {at.x, at.y, float(level)}; }
};

// `wide` pixels wide, where it is best seen of the places round its corner and not over the corner
// itself. Nothing where that is behind the eye or a section has taken it away. Points into
// `corner`.
std::optional<StandingRod> standRod(const OverlaySheet& sheet, const CornerRod& corner, float wide);
std::vector<StandingRod> standRods(const OverlaySheet& sheet, const std::vector<CornerRod>& rods,
                                   float wide);

// The one to be read: of the selected thing's corners, else of all, the nearest that is seen.
// `rods` may not be empty.
size_t nearestRod(const OverlaySheet& sheet, const std::vector<StandingRod>& rods);

}  // namespace viewer
