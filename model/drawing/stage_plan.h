// The plan beside a stage's picture: the building's lines, its corners' letters, and what the stage
// makes or takes away. Private to this folder.
#pragma once

#include "model/drawing/brief_facts.h"
#include "model/drawing/sheet.h"

namespace model {

// What of the things is seen from above, piece by piece, in metres; pieces may lie over each other.
Regions footprintsOf(const std::vector<const Element*>& elements);

// Drawn into the area at a round scale with a line of words beneath it. False, and nothing drawn,
// when the stage has nothing to be shown on plan, or no scale is large enough to read.
bool drawStagePlan(Sheet& sheet, const Area& area, const Model& model, const BriefFacts& facts,
                   size_t stage, const TextWidth& widthOf);

}  // namespace model
