// The files of a job's readings, beside the job file.
#pragma once

#include <string>
#include <vector>

#include "model/job/read_job.h"

namespace model {

// What is wrong with the name of a set's file; empty when nothing is. It stays in the job file's
// folder, so that a job can be moved and sent whole.
std::string readingFileFault(const std::string& file);

// The paths of the files of all sets, in the job's order; `jobPath` is the job file's.
std::vector<std::string> readingPaths(const Job& job, const std::string& jobPath);

// Reads the rows of every set. A file that cannot be read is a problem at its key, what is wrong in
// it one of that file. `job` must be free of errors.
Problems loadReadings(Job& job, const std::string& jobPath, const KeyPlaces& places);

}  // namespace model
