// How long each stage takes, from how much of it there is.
#pragma once

#include <map>

#include "model/job/masonry.h"
#include "model/works/element.h"

namespace model {

// Working days of one small crew (foreman, bricklayers as the job has them, labourer, hired
// digger), from the quantities of what appears or goes in each stage and common output rates.
// Brickwork and blockwork go by their units, each cut one like a whole one, and no stage raises a
// wall by more than the job's limit for each of its days. The works are gone through once.
class UsualDays {
 public:
  UsualDays(const LayingRates& laying, const Works& works);
  // In halves, at least 0.5.
  double of(const StageKey& stage) const;

 private:
  void countLaid(const LayingRates& laying, const Element& leaf);

  struct Rise {
    double from = 0, to = 0;  // levels
    double days = 0;          // that it takes at least
  };
  std::map<StageKey, double> counted_;
  std::map<StageKey, Rise> rises_;
};

// Calendar days that must pass after the stage before what stands on it may start. `beamFloor`: the
// ground floor is of beams and blocks.
double usualWaitDays(StageKind kind, bool beamFloor);

}  // namespace model
