// The lines on plan where what lies in the ground changes.
#pragma once

#include <vector>

#include "model/geometry/plan_mesh.h"
#include "model/works/ground_zones.h"

namespace model {

std::vector<PlanCut> groundCuts(const Job& job, const SettingOut& settingOut,
                                const GroundZones& zones);

}  // namespace model
