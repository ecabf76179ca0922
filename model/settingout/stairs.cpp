// The stairs as they lie.
#include "model/settingout/derive.h"

namespace model {

void deriveStairs(const Job& job, SettingOut& out) {
  for (size_t i = 0; i < job.stairs.size(); ++i)
    if (const auto flight = stairFlight(job, i)) out.stairs.push_back(*flight);
}

}  // namespace model
