// When what lies over and under a lintel is laid.
#pragma once

#include "model/settingout/setting_out.h"
#include "model/works/element.h"

namespace model {

// When the run between the corners has come up to a level; at a gable, over where its wall ends
// level, the gable. Always whole.
Placement whenLeafReaches(const Job& job, const SettingOut& settingOut, double level, bool inGable);

}  // namespace model
