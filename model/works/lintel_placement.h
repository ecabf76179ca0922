// When what belongs to a lintel is laid: itself, and the tray over it.
#pragma once

#include "model/walls/leaf_plan.h"
#include "model/works/element.h"

namespace model {

// In a stage of their own lintels come one after another, each with what lies over it; otherwise a
// thing at `level` comes when the wall that rises has come up to it. Always whole.
Placement whenWallReaches(const SettingOut& settingOut, const LintelPlan& lintel, double level);

}  // namespace model
