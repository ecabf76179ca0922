#include "viewer/panels/reading_file.h"

#include <filesystem>

#include "model/job/read_job.h"
#include "model/job/reading_files.h"
#include "model/job/slug.h"
#include "model/job/text_file.h"
#include "model/job/write_job.h"
#include "model/problem_lines.h"

namespace viewer {
namespace {

namespace fs = std::filesystem;

// "house-concrete.csv", or with a number when there is such a file.
std::string freeName(const fs::path& jobPath, const std::string& setName) {
  const std::string slug = model::slugOf(setName).substr(0, 60);
  const std::string stem = jobPath.stem().string() + "-" + (slug.empty() ? "readings" : slug);
  std::error_code ignored;
  std::string name = stem + ".csv";
  for (int n = 2; fs::exists(jobPath.parent_path() / name, ignored); ++n)
    name = stem + "-" + std::to_string(n) + ".csv";
  return name;
}

std::string wordsOf(const model::TypedReading& typed) {
  std::string words = typed.at;
  if (!typed.along.empty()) words += " at " + typed.along;
  const std::string value = typed.value.empty() ? typed.x + ", " + typed.y : typed.value;
  return words + (words.empty() ? "" : "  ") + value;
}

// The text, or why it cannot be had.
std::variant<std::string, model::Problem> textOf(const std::string& path) {
  std::string fault;
  if (auto text = model::readTextFile(path, fault)) return std::move(*text);
  return model::unreadableFile(path, fault);
}

bool isStill(const std::string& path, const std::string& text) {
  const auto now = textOf(path);
  const auto* there = std::get_if<std::string>(&now);
  return there && *there == text;
}

// A job with the set at its end, and the text of the job file that says so.
struct WithSet {
  model::Job job;
  SavedFile file;
};

std::variant<WithSet, std::string> withSet(const std::string& jobPath, const NewSet& set) {
  const auto read = textOf(jobPath);
  if (const auto* problem = std::get_if<model::Problem>(&read)) return model::inOneLine(*problem);
  const auto& text = std::get<std::string>(read);
  const model::ReadResult before = model::readJob(text, jobPath);
  if (!before.job) return std::string("put the job file's problems right first");
  model::Job job = *before.job;
  model::ReadingSet fresh;
  fresh.name = set.name;
  fresh.date = set.date;
  fresh.by = set.by;
  fresh.file = freeName(jobPath, set.name);
  job.readings.push_back(fresh);
  const std::string changed = model::writeJob(text, job);
  const model::ReadResult after = model::readJob(changed, jobPath);
  if (!after.job)
    return model::firstError(after.problems).value_or("the job file would have a problem");
  return WithSet{*after.job, {jobPath, text, changed}};
}

}  // namespace

ReadingSaved saveReading(const std::string& jobPath, const model::Job& job, size_t set,
                         const model::TypedReading& typed) {
  const std::string path = model::readingPaths(job, jobPath).at(set);
  const auto read = textOf(path);
  if (const auto* problem = std::get_if<model::Problem>(&read)) return model::inOneLine(*problem);
  const auto& text = std::get<std::string>(read);
  const model::AddedReading added = model::addReading(text, typed, path, job);
  if (!added.reading)
    return model::firstError(added.problems).value_or("put the file of the readings right first");
  if (const auto failed = model::saveAtomically(path, added.text)) return model::inOneLine(*failed);
  return SavedReading{wordsOf(typed), {path, text, added.text}, std::nullopt};
}

ReadingSaved saveInNewSet(const std::string& jobPath, const NewSet& set,
                          const model::TypedReading& typed) {
  const auto longer = withSet(jobPath, set);
  if (const auto* wrong = std::get_if<std::string>(&longer)) return *wrong;
  const auto& with = std::get<WithSet>(longer);
  const std::string path = model::readingPaths(with.job, jobPath).back();
  const model::AddedReading added = model::addReading("", typed, path, with.job);
  if (!added.reading) return model::firstError(added.problems).value_or("the reading is not whole");
  // The readings first: a job file must not name a file that is not there.
  if (const auto failed = model::saveAtomically(path, added.text)) return model::inOneLine(*failed);
  if (const auto failed = model::saveAtomically(jobPath, with.file.after)) {
    std::error_code ignored;
    fs::remove(path, ignored);
    return model::inOneLine(*failed);
  }
  return SavedReading{wordsOf(typed), {path, "", added.text}, with.file};
}

std::optional<std::string> takeBack(const SavedReading& saved) {
  const std::string name = fs::path(saved.file.path).filename().string();
  if (!isStill(saved.file.path, saved.file.after))
    return name + " has been changed since; take the row out there";
  if (!saved.job) {
    if (const auto failed = model::saveAtomically(saved.file.path, saved.file.before))
      return model::inOneLine(*failed);
    return std::nullopt;
  }
  if (!isStill(saved.job->path, saved.job->after))
    return "the job file has been changed since; take the set out there";
  if (const auto failed = model::saveAtomically(saved.job->path, saved.job->before))
    return model::inOneLine(*failed);
  std::error_code ignored;
  fs::remove(saved.file.path, ignored);
  return std::nullopt;
}

}  // namespace viewer
