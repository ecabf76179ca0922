// Deliveries on the chart of dates: which entry of the job each arrow is, and what it says when the
// arrow is pulled to another day.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/model.h"

namespace viewer {

struct DeliveryMark {
  size_t delivery = 0;  // into ProgrammeInput::deliveries
  size_t stage = 0;
  long day = 0;  // since 1970-01-01
};

// Those that have a date, in the job's order; none without a start.
std::vector<DeliveryMark> deliveryMarks(const model::Model& model);

// How many working days before its stage a delivery on a day is; a day on which nobody works counts
// as the next one that is worked. Nothing, with the reason in `why`, when it cannot be then.
std::optional<double> daysBeforeOn(const model::Model& model, const DeliveryMark& mark, long day,
                                   std::string& why);

// The date on which a delivery so many working days before the stage comes.
long deliveryDay(const model::Model& model, size_t stage, double daysBefore);

}  // namespace viewer
