// Readings counted and sorted, as a report tells of them.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/asbuilt/as_built.h"

namespace model {

struct ReadingCount {
  // Of those that count: no later set has their point.
  size_t within = 0, atTheEdge = 0, out = 0;
  size_t readAgain = 0;  // held, but a later set has the point
  size_t unheld = 0;     // the drawing has nothing to hold against

  size_t counting() const { return within + atTheEdge + out; }
  size_t all() const { return counting() + readAgain + unheld; }
};

// Of one set, by its index in Job::readings, or of all.
ReadingCount countReadings(const AsBuilt& built, std::optional<size_t> set = std::nullopt);

// Those that count and are out, then those at the edge, as indices of AsBuilt::deviations; in each
// the one first that is the most of what it is allowed. No more than `most`.
std::vector<size_t> mostOff(const AsBuilt& built, size_t most);

// Readings are numbered from 1 through all sets in the job's order, so that a drawing, a table and
// a question name them alike.
size_t readingNumber(const Job& job, size_t set, size_t row);

// What was read without where: "top of concrete", "side of the outer face".
std::string targetWords(const Deviation& deviation);

// "-12", "+3", "0", "-0.5": millimetres with their sign, to a tenth.
std::string signedMillimetres(double metres);

}  // namespace model
