#include "viewer/job_loader.h"

#include <chrono>
#include <exception>

#include "model/in_parallel.h"
#include "viewer/commands/load_job.h"

namespace viewer {
namespace {

JobResult read(const std::string& path) {
  JobResult result;
  try {
    LoadedJob loaded = loadJob(path, false);
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

ReadyJob::ReadyJob(model::Model from, model::KeyPlaces given)
    : model(std::move(from)),
      places(std::move(given)),
      scene(sceneAndFacts()),
      picker(scene),
      views(model, scene, picker) {}

// The facts are members before the scene: they are there by now.
Scene ReadyJob::sceneAndFacts() {
  Scene made;
  model::inParallel(3, [&](size_t which) {
    if (which == 0) {
      made = buildScene(model);
      return;
    }
    if (which == 1) {
      model::count(model);
      return;
    }
    setOut = model::deriveLines(model.job, model.settingOut);
    asBuilt = model::deriveAsBuilt(model.job, model.settingOut);
    facts = deriveJobFacts(model, asBuilt);
  });
  return made;
}

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
