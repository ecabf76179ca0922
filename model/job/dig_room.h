// What is dug outside the walls below ground: the clear bottom, before any slope of its sides.
#pragma once

#include <algorithm>

#include "model/job/job.h"

namespace model {

// Of the cellar's dig outside the cellar's walls: the working space, but never less than the
// slab's toe and the waterproofing need. Metres; the job has a cellar.
inline double roomRoundCellar(const Job& job) {
  constexpr double kGap = 0.05;  // least room outside the toe
  return std::max({job.ground.workingSpace, job.cellar->toe + kGap, job.cellar->membrane + kGap});
}

// Of the foundation's trench outside the outer face of the wall; the strip is central under it.
inline double roomOutsideWall(const Job& job) {
  return std::max(0.0, (job.foundations.width - job.walls.total()) / 2);
}

}  // namespace model
