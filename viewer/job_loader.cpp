#include "viewer/job_loader.h"

#include <chrono>
#include <exception>

#include "viewer/commands/load_job.h"

namespace viewer {
namespace {

JobResult read(const std::string& path) {
  JobResult result;
  try {
    LoadedJob loaded = loadJob(path);
    result.problems = std::move(loaded.problems);
    result.files = std::move(loaded.files);
    if (loaded.model)
      result.job = std::make_unique<ReadyJob>(std::move(*loaded.model), std::move(loaded.places));
  } catch (const std::exception& error) {
    // The reader and the model do not throw for any file; should one, the window stays open.
    model::Problem problem;
    problem.file = path;
    problem.what = std::string("the building could not be worked out: ") + error.what();
    result.problems.push_back(problem);
    result.job.reset();
  }
  return result;
}

}  // namespace

void JobLoader::start(double now) {
  if (busy()) {
    again_ = true;
    return;
  }
  started_ = now;
  pending_ = std::async(std::launch::async, read, path_);
}

std::optional<JobResult> JobLoader::take(double now) {
  if (!busy() || pending_.wait_for(std::chrono::seconds(0)) != std::future_status::ready)
    return std::nullopt;
  JobResult result = pending_.get();
  if (again_) {
    again_ = false;
    start(now);
  }
  return result;
}

}  // namespace viewer
