// The programme's dates for a phone or an office calendar.
#pragma once

#include <string>

#include "model/model.h"

namespace model {

// iCalendar (RFC 5545), a whole-day event for each hold point, delivery, muck-away and decision;
// and for each stage when `stages`. Identifiers stay the same as long as the job's name and its
// stages do, so that a calendar that reads the file again moves what it has. Empty calendar when
// the job gives no start.
std::string eventCalendar(const Model& model, bool stages);

}  // namespace model
