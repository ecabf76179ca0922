// The instrument of one of the job's set-ups, and the marks that it is levelled from.
#pragma once

#include <optional>
#include <vector>

#include "model/job/job.h"
#include "model/levelling/instrument.h"
#include "model/levelling/level_book.h"

namespace model {

// The bench mark of a set-up: that of its name, or else the job's main one; without a main one the
// first. Null when the job has none such (validateJob refuses that).
const BenchMark* markOf(const Job& job, const SetUp& setUp);

// Set up on that mark; nothing without one.
std::optional<Instrument> instrumentOf(const Job& job, const SetUp& setUp);

// The job's bench marks for a level book, the main one first.
std::vector<Mark> marksOf(const Job& job);

}  // namespace model
