// Rails round the cellar hole, and the plan areas that temporary works keep to or keep out of.
#pragma once

#include "model/works/element.h"
#include "model/works/ground_zones.h"

namespace model {

// The flat bottom of the cellar's hole as it can really be dug: on the site, clear of buildings.
Regions cellarHole(const Job& job, const SettingOut& settingOut);

// The plan of one foundation run's concrete, laps left out.
Regions foundationArea(const SettingOut& settingOut, size_t run);
// The plan of all foundation concrete outside the cellar.
Regions foundationAreas(const SettingOut& settingOut);

void buildEdgeProtection(const Job& job, const SettingOut& settingOut, Works& works);

}  // namespace model
