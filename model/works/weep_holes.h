// Open cross joints of the outer leaf through which the cavity drains.
#pragma once

#include <optional>
#include <vector>

#include "model/bond/laid_leaf.h"
#include "model/works/cavity_plan.h"
#include "model/works/element.h"

namespace model {

struct WeepHole {
  std::optional<size_t> tray;  // into CavityPlan::trays; none: at the foot of the cavity
  Rect rect;                   // in the leaf's elevation: a cross joint, as high as its course
};

// In real cross joints: over each tray two or more in the course that stands on it, and all along
// the course under the damp course where that is above the ground; no farther apart than the job
// says where joints allow.
std::vector<WeepHole> weepHoles(const Job& job, const SettingOut& settingOut,
                                const CavityPlan& cavity, const LaidLeaf& outer);

// A vent in each of them, through the leaf.
void buildWeepVents(const Job& job, const SettingOut& settingOut, const CavityPlan& cavity,
                    const std::vector<WeepHole>& holes, Works& works);

}  // namespace model
