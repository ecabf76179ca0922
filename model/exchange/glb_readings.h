// What was read on site, in a GLB file: a marker at each point, and words in the extras of the
// things that were read.
//
// Markers are told apart by shape as well as by colour: a small octahedron within what is allowed,
// a tall one at the edge, a pyramid that points up where it is out and high, outside or long, and
// down where it is low, inside or short. Each stands on its point. Of each the latest reading
// counts.
#pragma once

#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

#include "model/asbuilt/as_built.h"
#include "model/exchange/glb_text.h"
#include "model/model.h"

namespace model {

struct GlbReadings {
  Works markers;                  // one element for each; named, without an id
  std::vector<Verdict> verdicts;  // by marker
  std::vector<GlbExtras> extras;  // by marker
  std::unordered_map<std::string, GlbExtras> ofElements;  // by Element::id
};

// Nothing for a job without readings.
std::optional<GlbReadings> glbReadings(const Model& model);

}  // namespace model
