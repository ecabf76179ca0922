// Readings held against the drawing, and what they change, as tables.
#pragma once

#include <string>
#include <vector>

#include "model/asbuilt/as_built.h"
#include "model/exchange/table_part.h"

namespace model {

// Keys: "deviations", "changes", "beds", "walls", "rafters".
using ReadingPart = TablePart;

// In that order; a part without rows says so in words. `built` is deriveAsBuilt() of this job.
std::vector<ReadingPart> readingParts(const Job& job, const SettingOut& settingOut,
                                      const AsBuilt& built);

// The keys.
const std::vector<std::string>& readingPartKeys();

}  // namespace model
