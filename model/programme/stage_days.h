// How long each stage takes, from how much of it there is.
#pragma once

#include <map>

#include "model/works/element.h"

namespace model {

// Working days of one small crew (foreman, second bricklayer, labourer, hired digger), from the
// quantities of what appears or goes in each stage and common output rates. The works are gone
// through once.
class UsualDays {
 public:
  explicit UsualDays(const Works& works);
  // In halves, at least 0.5.
  double of(const StageKey& stage) const;

 private:
  std::map<StageKey, double> counted_;
};

// Calendar days that must pass after the stage before what stands on it may start. `beamFloor`: the
// ground floor is of beams and blocks.
double usualWaitDays(StageKind kind, bool beamFloor);

}  // namespace model
