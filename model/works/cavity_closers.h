// What closes the cavity at the jambs and sills of openings.
#pragma once

#include <string>
#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"
#include "model/walls/elevation.h"
#include "model/walls/leaf_plan.h"
#include "model/works/element.h"

namespace model {

// One closer in the elevation of the cavity.
struct CloserPlan {
  size_t opening = 0;  // into SettingOut::openings
  std::string place;   // "left jamb", "right jamb", as seen from outside; "sill", "threshold"
  Rect rect;
  bool upright = true;
};

// Beside every opening of a wall and under its sill or threshold; none that would lie in another
// opening, over a slope or past a corner. They share no place.
std::vector<CloserPlan> closerPlan(const Job& job, const SettingOut& settingOut, size_t wall);

// Insulated closers across the cavity, built in lift by lift with the leaves; between the upright
// ones and the outer leaf a damp course.
void buildCavityClosers(const Job& job, const SettingOut& settingOut, size_t wall, Works& works);

}  // namespace model
