// What is worth asking about before the work starts: things that the drawing may well mean, but
// that somebody competent should have looked at. Nothing here decides; it says what to ask.
#pragma once

#include "model/job/read_job.h"
#include "model/settingout/setting_out.h"

namespace model {

// Warnings only. The job must be free of errors; positions are looked up in `places`, which may be
// empty.
Problems checkBuilding(const Job& job, const SettingOut& settingOut, const std::string& file,
                       const KeyPlaces& places);

}  // namespace model
