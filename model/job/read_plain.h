// Reading without the checks on meaning: for the writer, which compares what two texts say.
#pragma once

#include <optional>
#include <string>

#include "model/job/job.h"

namespace model {

// The job that `text` says, whether or not it makes sense; nothing when any of it cannot be read.
std::optional<Job> readPlain(const std::string& text);

}  // namespace model
