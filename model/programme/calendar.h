// Working days and the dates they fall on.
#pragma once

#include <optional>
#include <string>

#include "model/programme/programme.h"

namespace model {

// Days since 1970-01-01 of an ISO date, "2027-04-12". Nothing when it is not a date.
std::optional<long> dayNumber(const std::string& isoDate);
std::string isoDate(long dayNumber);

// Gives every stage its start and finish. One crew takes the stages in turn, Monday to Friday from
// `start`; a stage also waits until what it stands on has had its waiting days, which run through
// weekends. Leaves the dates empty when `start` is not a date.
void setDates(Programme& programme, const std::string& start);

}  // namespace model
