// Straight joints that part the outer leaf of a wall from its foot to its top.
#pragma once

#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"

namespace model {

struct MovementGap {
  size_t joint = 0;         // into Job::movementJoints
  double from = 0, to = 0;  // s of its edges
};

// Those of one wall, along it.
std::vector<MovementGap> movementJointsIn(const Job& job, const SettingOut& settingOut,
                                          size_t wall);

}  // namespace model
