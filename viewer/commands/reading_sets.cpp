#include "viewer/commands/reading_sets.h"

#include <algorithm>
#include <filesystem>
#include <vector>

namespace viewer {

std::optional<std::string> keepOneSet(model::Job& job, const std::string& name) {
  if (name.empty()) return std::nullopt;
  std::string names;
  for (const model::ReadingSet& set : job.readings) names += (names.empty() ? "" : ", ") + set.name;
  std::erase_if(job.readings, [&](const model::ReadingSet& set) { return set.name != name; });
  if (!job.readings.empty()) return std::nullopt;
  return "there is no set of readings \"" + name + "\"; " +
         (names.empty() ? "the job has none" : "the sets are " + names);
}

bool holdsReadings(const LoadedJob& loaded, const std::string& path) {
  std::error_code ignored;
  // The first is the job file itself.
  return std::any_of(
      loaded.files.begin() + std::min<long>(1, long(loaded.files.size())), loaded.files.end(),
      [&](const std::string& file) { return std::filesystem::equivalent(file, path, ignored); });
}

std::optional<std::string> wouldReplaceReadings(const LoadedJob& loaded, const std::string& out) {
  if (!holdsReadings(loaded, out)) return std::nullopt;
  return "--out \"" + out + "\" holds readings of this job; choose another name";
}

}  // namespace viewer
