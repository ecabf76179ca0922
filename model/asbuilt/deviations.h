// Every reading of the job held against the drawing.
#pragma once

#include <string>
#include <vector>

#include "model/asbuilt/deviation.h"

namespace model {

// A reading that the drawing has nothing to hold against.
struct Unheld {
  size_t set = 0, row = 0;  // into Job::readings
  std::string why;
};

struct Deviations {
  std::vector<Deviation> held;  // in the job's order of sets and rows
  std::vector<Unheld> unheld;
};

// Which reading of a point counts: that of the latest set, by its date; a set without a date is
// taken to follow the one before it in the job, and of one day the later in the job counts.
Deviations deriveDeviations(const Job& job, const SettingOut& settingOut);

}  // namespace model
