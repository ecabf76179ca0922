#include "viewer/commands/load_job.h"

#include <iostream>

#include "model/checks/check_building.h"
#include "model/job/read_job.h"
#include "model/programme/check_programme.h"

namespace viewer {

LoadedJob loadJob(const std::string& path) {
  model::ReadResult read = model::readJobFile(path);
  LoadedJob loaded;
  loaded.problems = std::move(read.problems);
  if (!read.job || model::hasErrors(loaded.problems)) return loaded;
  loaded.model = model::buildModel(*read.job);
  for (const model::Problems& more :
       {model::checkBuilding(*read.job, loaded.model->settingOut, path, read.places),
        model::checkProgramme(*read.job, loaded.model->programme, path, read.places)}) {
    loaded.problems.insert(loaded.problems.end(), more.begin(), more.end());
  }
  model::sortByPlace(loaded.problems);
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
