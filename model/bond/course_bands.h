// The courses of a leaf from the concrete to its top.
#pragma once

#include <vector>

#include "model/bond/laid_leaf.h"

namespace model {

// The outer leaf keeps to whole courses from the damp course up and down; what is left over lies at
// the very bottom, on the concrete. The inner leaf does so below; above, each lift begins with a
// whole block, and its last course is cut to the lift's top. `top` is the leaf's highest point.
std::vector<CourseBand> courseBands(const Job& job, const SettingOut& settingOut,
                                    const LeafPlan& plan, double top);

}  // namespace model
