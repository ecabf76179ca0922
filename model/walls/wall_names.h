// How walls, storeys and lifts are named in ids and to people.
#pragma once

#include <string>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"

namespace model {

// "wall A-B/outer leaf": the beginning of the id of everything in one layer of a wall.
std::string layerId(const WallLine& wall, const std::string& layer);
// "Wall A-B, outer leaf".
std::string layerName(const WallLine& wall, const std::string& layer);
// "First floor/lift 2": storeys' names are unique in a job.
std::string liftId(const Job& job, const Lift& lift);
// "lift 2", or "First floor lift 2", as the job spells it, where there is more than one storey.
std::string liftName(const Job& job, const Lift& lift);
// ", top blocks cut to 198" where whole blocks do not come out in a height that is built from its
// bottom; empty where they do.
std::string topCourseWords(const WallBuildUp& walls, double height);

}  // namespace model
