// Sets of readings as commands take them.
#pragma once

#include <optional>
#include <string>

#include "model/job/job.h"
#include "viewer/commands/load_job.h"

namespace viewer {

// Leaves only the sets of that name in the job; all when it is empty. What to say when there is
// none.
std::optional<std::string> keepOneSet(model::Job& job, const std::string& name);

// The file of that path is one that the job's readings stand in, under whatever name.
bool holdsReadings(const LoadedJob& loaded, const std::string& path);

// What to say when `out` is such a file; nothing when it is none.
std::optional<std::string> wouldReplaceReadings(const LoadedJob& loaded, const std::string& out);

}  // namespace viewer
