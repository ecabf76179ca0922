// The jobs of assets/jobs, for tests.
#pragma once

#include <stdexcept>
#include <string>
#include <vector>

#include "model/job/read_job.h"

namespace test_support {

inline const std::vector<std::string>& demoNames() {
  static const std::vector<std::string> names{"orchard-house", "garage", "garden-store",
                                              "skew-corner", "smallest"};
  return names;
}

// Throws with the first problem when the file does not read.
inline model::Job demoJob(const std::string& name) {
  const auto read = model::readJobFile(std::string(SOURCE_DIR) + "/assets/jobs/" + name + ".toml");
  if (read.job) return *read.job;
  throw std::runtime_error(read.problems.empty() ? "no job" : format(read.problems.front()));
}

}  // namespace test_support
