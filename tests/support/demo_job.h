// The jobs of assets/jobs, for tests.
#pragma once

#include <algorithm>
#include <filesystem>
#include <stdexcept>
#include <string>
#include <vector>

#include "model/job/read_job.h"
#include "model/job/reading_files.h"
#include "tests/support/folders.h"

namespace test_support {

// Whatever lies in the folder, by name, without ".toml": a new job is in every test at once.
inline const std::vector<std::string>& demoNames() {
  static const std::vector<std::string> names = [] {
    std::vector<std::string> found;
    for (const auto& entry :
         std::filesystem::directory_iterator(test_support::sourceFolder() + "/assets/jobs"))
      if (entry.path().extension() == ".toml") found.push_back(entry.path().stem().string());
    std::sort(found.begin(), found.end());
    return found;
  }();
  return names;
}

// With its readings. Throws with the first problem when a file does not read.
inline model::Job demoJob(const std::string& name) {
  const std::string path = test_support::sourceFolder() + "/assets/jobs/" + name + ".toml";
  auto read = model::readJobFile(path);
  if (read.job) {
    const model::Problems problems = model::loadReadings(*read.job, path, read.places);
    if (!hasErrors(problems)) return *read.job;
    read.problems = problems;
  }
  throw std::runtime_error(read.problems.empty() ? "no job" : format(read.problems.front()));
}

}  // namespace test_support
