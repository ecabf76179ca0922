#include "viewer/commands/example_job.h"

#include <filesystem>

namespace viewer {

std::string exampleJob() {
  namespace fs = std::filesystem;
  std::error_code error;
  const fs::path program = fs::read_symlink("/proc/self/exe", error);
  if (error) return "";
  const fs::path folder = program.parent_path();
  for (const char* place : {"../share/stringcourse/jobs", "../assets/jobs"}) {
    const fs::path job = (folder / place / "orchard-house.toml").lexically_normal();
    if (fs::exists(job, error)) return job.string();
  }
  return "";
}

}  // namespace viewer
