#include "viewer/commands/load_job.h"

#include <algorithm>
#include <iostream>

#include "model/checks/check_building.h"
#include "model/in_parallel.h"
#include "model/job/read_job.h"
#include "model/job/reading_files.h"
#include "model/programme/check_programme.h"

namespace viewer {

LoadedJob loadJob(const std::string& path, bool counted) {
  model::ReadResult read = model::readJobFile(path);
  LoadedJob loaded;
  loaded.problems = std::move(read.problems);
  if (!read.job || model::hasErrors(loaded.problems)) return loaded;
  loaded.files = model::readingPaths(*read.job, path);
  loaded.files.insert(loaded.files.begin(), path);
  model::Problems ofReadings = model::loadReadings(*read.job, path, read.places);
  model::Problems ofBuilding;
  model::inParallel(2, [&](size_t which) {
    if (which == 0)
      loaded.model = counted ? model::buildModel(*read.job) : model::buildUncounted(*read.job);
    else  // its own setting-out, which takes next to nothing, so as not to wait for the model's
      ofBuilding =
          model::checkBuilding(*read.job, model::deriveSettingOut(*read.job), path, read.places);
  });
  for (const model::Problems& more :
       {ofBuilding, model::checkProgramme(loaded.model->programme, path, read.places)}) {
    loaded.problems.insert(loaded.problems.end(), more.begin(), more.end());
  }
  // Those of other files behind the job's own.
  const auto others =
      std::stable_partition(ofReadings.begin(), ofReadings.end(),
                            [&](const model::Problem& problem) { return problem.file == path; });
  loaded.problems.insert(loaded.problems.end(), ofReadings.begin(), others);
  model::sortByPlace(loaded.problems);
  loaded.problems.insert(loaded.problems.end(), others, ofReadings.end());
  if (model::hasErrors(loaded.problems)) loaded.model.reset();
  loaded.places = std::move(read.places);
  return loaded;
}

void printProblems(const model::Problems& problems) {
  for (const model::Problem& problem : problems) std::cerr << model::format(problem) << "\n";
}

void printAbout(const std::string& path, std::optional<model::Problem> problem) {
  if (!problem) return;
  problem->file = path;
  printProblems({*problem});
}

std::optional<model::Model> loadAndTell(const std::string& path) {
  LoadedJob loaded = loadJob(path);
  printProblems(loaded.problems);
  return std::move(loaded.model);
}

}  // namespace viewer
