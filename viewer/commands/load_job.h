// From the path on the command line to the model, telling what is wrong on the way.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/job/read_job.h"
#include "model/model.h"
#include "model/problems.h"

namespace viewer {

struct LoadedJob {
  std::optional<model::Model> model;  // only when the job has no error
  model::Problems problems;           // errors and warnings, the programme's included
  model::KeyPlaces places;            // of the keys that the file gives
  // What it was read from: the job file, then its readings'. Empty when the job file has errors.
  std::vector<std::string> files;
};

// `counted`: with the model's takeoff.
LoadedJob loadJob(const std::string& path, bool counted = true);

// Every problem on a line of its own, to standard error.
void printProblems(const model::Problems& problems);

// One that knows no file yet, or none at all, about the job at `path`.
void printAbout(const std::string& path, std::optional<model::Problem> problem);

// loadJob and printProblems: what every command but `check` begins with.
std::optional<model::Model> loadAndTell(const std::string& path);

}  // namespace viewer
