// What is worth asking about before the work starts: things that the drawing may well mean, but
// that somebody competent should have looked at. Warnings only say what to ask. What must not be
// built, and only the ground tells, is an error: a slope of the dig that runs under a building.
#pragma once

#include "model/job/read_job.h"
#include "model/settingout/setting_out.h"

namespace model {

// The job must be free of the reader's errors; positions are looked up in `places`, which may be
// empty. With an error among them the job is not to be shown or built.
Problems checkBuilding(const Job& job, const SettingOut& settingOut, const std::string& file,
                       const KeyPlaces& places);

// Of them what is said of openings and piers that are not in brick sizes, for who tells the small
// moves as well.
Problems checkBrickSizes(const Job& job, const SettingOut& settingOut, const std::string& file,
                         const KeyPlaces& places);

}  // namespace model
