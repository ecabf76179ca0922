// When gables rise.
#pragma once

#include "model/settingout/setting_out.h"
#include "model/works/element.h"

namespace model {

// Of the stage: the brickwork of gables is up; what is left is for the copings of parapets, where
// there are any.
inline constexpr double kParapetsUp = 0.85;

// From the eaves to the highest gable's top.
Placement gableRise(const Job& job, const SettingOut& settingOut);

}  // namespace model
