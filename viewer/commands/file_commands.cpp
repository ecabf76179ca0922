#include "viewer/commands/file_commands.h"

#include <filesystem>
#include <iostream>

#include "model/exchange/glb.h"
#include "model/job/write_job.h"
#include "viewer/commands/load_job.h"
#include "viewer/commands/output.h"

namespace viewer {

int runShare(const std::string& job, const std::string& out) {
  if (auto wrong = wouldReplaceJob(job, out)) return wrongUsage(*wrong);
  if (auto wrong = otherEnding(out, ".glb", "what is shared")) return wrongUsage(*wrong);
  const auto model = loadAndTell(job);
  if (!model) return kProblems;
  if (const auto problem = model::writeGlb(*model, out)) {
    std::cerr << model::format(*problem) << "\n";
    return kProblems;
  }
  return kWell;
}

int runNew(const std::string& out) {
  if (auto wrong = otherEnding(out, ".toml", "a job file")) return wrongUsage(*wrong);
  std::error_code ignored;
  if (std::filesystem::exists(std::filesystem::symlink_status(out, ignored))) {
    std::cerr << out << ": there is a file of this name already; choose another name\n";
    return kProblems;
  }
  return saveOut(out, model::starterJob());
}

}  // namespace viewer
