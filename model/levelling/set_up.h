// The instrument of one of the job's set-ups.
#pragma once

#include <optional>

#include "model/job/job.h"
#include "model/levelling/instrument.h"

namespace model {

// The bench mark of a set-up: that of its name, or else the job's main one; without a main one the
// first. Null when the job has none such (validateJob refuses that).
const BenchMark* markOf(const Job& job, const SetUp& setUp);

// Set up on that mark; nothing without one.
std::optional<Instrument> instrumentOf(const Job& job, const SetUp& setUp);

}  // namespace model
