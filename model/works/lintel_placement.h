// When a lintel is laid, and what lies over and under it.
#pragma once

#include "model/walls/leaf_plan.h"
#include "model/works/element.h"

namespace model {

// In a stage of their own lintels come one after another, each with what lies over it; otherwise a
// thing at `level` comes when the wall that rises has come up to it. Always whole.
Placement whenWallReaches(const SettingOut& settingOut, const LintelPlan& lintel, double level);

// When the run between the corners has come up to a level; at a gable, over where its wall ends
// level, the gable. Always whole.
Placement whenLeafReaches(const SettingOut& settingOut, double level, bool inGable);

}  // namespace model
