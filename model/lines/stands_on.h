// What the instrument of a set-up stands on.
#pragma once

#include <optional>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"

namespace model {

// Level of the floor that a set-up names, as it is while there is work to level: the bare slab or
// deck. Nothing on the ground, and for a floor that the job does not have (validateJob refuses it).
std::optional<double> floorOf(const Job& job, const SettingOut& settingOut, const SetUp& setUp);

// How far such a floor goes: between the walls.
Polygon floorArea(const Job& job, const SettingOut& settingOut, const SetUp& setUp);

// Its level, or that of the ground as it was before the work.
double standsOn(const Job& job, const SettingOut& settingOut, const SetUp& setUp);

}  // namespace model
