// Builds every element of the job: one table of functions, in the order a builder works.
#pragma once

#include "model/job/job.h"
#include "model/settingout/setting_out.h"
#include "model/works/element.h"

namespace model {

// Equal input gives equal output, element for element. Solids are closed and do not overlap:
// elements that exist at the same moment share at most faces.
Works buildWorks(const Job& job, const SettingOut& settingOut);

}  // namespace model
