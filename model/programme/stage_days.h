// How long each stage takes, from how much of it there is.
#pragma once

#include "model/works/element.h"

namespace model {

// Working days of one small crew (foreman, second bricklayer, labourer, hired digger), in halves,
// at least 0.5. From the quantities of what appears or goes in the stage and common output rates.
double usualDays(const StageKey& stage, const Works& works);

// Calendar days that must pass after the stage before what stands on it may start.
double usualWaitDays(StageKind kind);

}  // namespace model
