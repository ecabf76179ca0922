// How far what is built may be off what is drawn.
#pragma once

#include <string>

#include "model/job/job.h"

namespace model {

struct Allowed {
  double over = 0, under = 0;  // metres: above, outside, longer; below, inside, shorter
  std::string source;          // "NHBC Standards 2011, 1.2"; the job's own with its note
};

// `target` is a name of readingTargets(), with or without a storey. The job's own tolerance, else
// the published one, else common practice, and says which. `length` is that of the wall or side,
// by which some are told; whole millimetres.
Allowed allowedFor(const Job& job, const std::string& target, double length);

}  // namespace model
