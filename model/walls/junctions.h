// Where the end of a new wall is joined to a building that stands already.
#pragma once

#include <vector>

#include "model/job/job.h"
#include "model/walls/leaf_plan.h"

namespace model {

struct JunctionPlan {
  size_t junction = 0;  // into Job::junctions
  size_t wall = 0;
  bool atStart = true;  // which end of the wall
  size_t building = 0;  // into Site::buildings
  double gap = 0;       // from the end of the outer leaf to the old wall's face
  // Levels between which it is joined: over the damp course, as high as both are.
  double low = 0, top = 0;
};

// Those that can be built; validation tells of the others.
std::vector<JunctionPlan> junctionPlans(const Job& job, const SettingOut& settingOut);

// On plan, beyond the end of the outer leaf: from `from` to `to` metres away from it, and from d0
// to d1 into the wall from its outer face. Anticlockwise.
Polygon beyondEnd(const SettingOut& settingOut, const JunctionPlan& plan, double from, double to,
                  double d0, double d1);

// A strip that starter ties hook into: common practice, no source.
inline constexpr double kStripWidth = 0.060, kStripThickness = 0.003;

// Levels of the bed joints of the outer leaf in which the ties from a strip lie, lowest first:
// their undersides. Between a plan's levels, no farther apart than the drawing says.
std::vector<double> starterTies(const Job& job, const SettingOut& settingOut,
                                const JunctionPlan& plan);

}  // namespace model
