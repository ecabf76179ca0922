// The hole in a floor that a stair comes up through.
#pragma once

#include <vector>

#include "model/settingout/setting_out.h"

namespace model {

// Its plan in the floor that the flight lands on: as wide as the stair, and up to a wall that it
// runs along when the floor is of timber, so that no strip of deck is left there.
Polygon wellCut(const Job& job, const SettingOut& settingOut, const StairFlight& flight);

// The wells in the floor of a storey.
std::vector<const StairFlight*> flightsTo(const SettingOut& settingOut, size_t storey);

}  // namespace model
