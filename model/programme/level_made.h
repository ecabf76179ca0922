// From when each scheduled level is really there to be measured on.
#pragma once

#include <vector>

#include "model/programme/programme.h"

namespace model {

// For each line of the schedule, in its order, the time of the programme's clock at which the last
// thing is complete that has a face, top or underside, at that level; for a formation, at which the
// last of the soil over it is dug. -1 for the ground; kNever for what this job does not make, such
// as ceilings. Looks at the things that could make a level only: quick enough for every frame.
std::vector<double> timesOfLevels(const SettingOut& settingOut, const Works& works,
                                  const Programme& programme);

}  // namespace model
