// What lies in the movement joints of an outer leaf.
#pragma once

#include "model/walls/leaf_plan.h"
#include "model/works/element.h"

namespace model {

// Filler as deep as the leaf, sealed at its face, built in part by part as the leaf rises.
void buildJointFiller(const Job& job, const SettingOut& settingOut, const LeafPlan& leaf,
                      Works& works);

}  // namespace model
