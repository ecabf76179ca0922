// A job with its outer leaf laid dry.
#pragma once

#include <utility>

#include "model/bond/dry_bond.h"
#include "model/settingout/setting_out.h"

namespace model {

struct Laid {
  explicit Laid(Job given)
      : job(std::move(given)), out(deriveSettingOut(job)), bond(deriveDryBond(job, out)) {}
  Job job;
  SettingOut out;
  DryBond bond;
};

}  // namespace model
