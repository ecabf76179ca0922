// Gauge rods marked anew from the concrete as built.
#pragma once

#include <vector>

#include "model/asbuilt/as_built.h"
#include "model/settingout/gauge_rod.h"

namespace model {

// The courses from the concrete up to the damp course, lowest first: where one bed does not take it
// up and the joints below ground can share it, with those; else with the answer's first bed and its
// slip or cut course. None where the answer is to break out.
std::vector<RodCourse> asBuiltCourses(const Job& job, const SettingOut& settingOut,
                                      const FirstBed& bed);

// The rod of every corner whose concrete was read, in their order; from the damp course up as
// drawn. A corner that must be broken out has none.
std::vector<GaugeRod> deriveAsBuiltRods(const Job& job, const SettingOut& settingOut,
                                        const AsBuilt& built);

}  // namespace model
