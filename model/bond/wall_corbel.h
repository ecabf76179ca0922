// Courses of a house wall's outer leaf that stand out: how they turn corners, and where they stop.
#pragma once

#include <optional>
#include <vector>

#include "model/bond/laid_leaf.h"
#include "model/walls/corbels.h"

namespace model {

// Makes the pieces of a course ready to stand out. At an end where the corbel turns, its corner
// lies farther out than the wall's, so that an outside corner takes more brick and an inside one
// less: the piece in the corner keeps its length and the one beside it gives way. Where the corbel
// stops a brick ends. No piece is longer than a brick. `pieces` are one course of half a brick's
// thickness, in order.
void shapeCorbelCourse(const SettingOut& settingOut, const DryBond& bond, size_t wall,
                       const CorbelPlan& corbel, int course, std::vector<LaidPiece>& pieces);

// What a course of it takes of the leaf's elevation: from the first brick that stands out to the
// last, with the bed under them; far past an end at which it turns. None where no brick does.
std::optional<Rect> corbelRect(const CorbelPlan& corbel, const LaidLeaf& leaf, size_t band);

}  // namespace model
