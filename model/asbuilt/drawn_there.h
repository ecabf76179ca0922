// What the drawing says where a reading is about to be taken, and of one reading that is not yet
// the job's.
#pragma once

#include <optional>
#include <string>

#include "model/asbuilt/deviation.h"

namespace model {

// As deriveDeviations holds it; nothing, with the reason in `why`, when the drawing has nothing to
// hold it against. Its set and row are 0.
std::optional<Deviation> holdReading(const Job& job, const SettingOut& settingOut,
                                     const Reading& reading, std::string& why);

// "drawn -0.975", "drawn -0.975: read 2.616" of a staff reading, "drawn 11240"; both levels where
// two lengths of concrete meet. The reading's value is not looked at. Empty when the place it names
// is none, or the building has no such level there.
std::string drawnThereText(const Job& job, const SettingOut& settingOut, Reading reading);

}  // namespace model
