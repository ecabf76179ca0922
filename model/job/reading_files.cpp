#include "model/job/reading_files.h"

#include <cctype>
#include <filesystem>

#include "model/job/readings_csv.h"
#include "model/job/text_file.h"

namespace model {

namespace {

namespace fs = std::filesystem;

// Job files are UTF-8, on every system.
fs::path pathOf(const std::string& text) {
  return fs::path(std::u8string(text.begin(), text.end()));
}

std::string textOf(const fs::path& path) {
  const std::u8string text = path.u8string();
  return std::string(text.begin(), text.end());
}

Place placeOfFile(const KeyPlaces& places, size_t set) {
  const auto found = places.find("readings[" + std::to_string(set) + "].file");
  return found == places.end() ? Place{} : found->second;
}

}  // namespace

std::string readingFileFault(const std::string& file) {
  if (file.empty()) return "its file has no name";
  if (file.find('\\') != std::string::npos) return "its file's name has a \\ in it";
  const bool drive =
      file.size() > 1 && file[1] == ':' && std::isalpha(static_cast<unsigned char>(file[0])) != 0;
  if (file.front() == '/' || drive) return "its file is named from the top of the disk";
  for (const fs::path& part : pathOf(file)) {
    if (part == "..") return "its file leaves the job file's folder";
  }
  return file.back() == '/' ? "its file is a folder" : "";
}

std::vector<std::string> readingPaths(const Job& job, const std::string& jobPath) {
  std::vector<std::string> paths;
  for (const ReadingSet& set : job.readings)
    paths.push_back(textOf(pathOf(jobPath).parent_path() / pathOf(set.file)));
  return paths;
}

Problems loadReadings(Job& job, const std::string& jobPath, const KeyPlaces& places) {
  Problems problems;
  const std::vector<std::string> paths = readingPaths(job, jobPath);
  for (size_t i = 0; i < job.readings.size(); ++i) {
    ReadingSet& set = job.readings[i];
    set.rows.clear();
    std::string fault;
    const auto bytes = readTextFile(paths[i], fault);
    if (!bytes) {
      problems.push_back(
          {jobPath, placeOfFile(places, i), Severity::Error,
           "readings \"" + set.name + "\": " + set.file + " cannot be read: " + fault,
           "put the file beside the job file, or take the set out"});
      continue;
    }
    ReadingsResult read = readReadings(*bytes, paths[i], job);
    set.rows = std::move(read.rows);
    problems.insert(problems.end(), read.problems.begin(), read.problems.end());
  }
  return problems;
}

}  // namespace model
