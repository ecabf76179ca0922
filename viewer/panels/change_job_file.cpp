#include "viewer/panels/change_job_file.h"

#include <unistd.h>

#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "model/job/read_job.h"
#include "model/job/write_job.h"
#include "model/problem_lines.h"

namespace viewer {
namespace {

// Metres with a point, a sign allowed; nothing for anything else.
std::optional<double> levelOf(const std::string& text) {
  const size_t first = text.find_first_not_of(' ');
  if (first == std::string::npos) return std::nullopt;
  // strtod reads "inf" and "0x1" too.
  const std::string typed = text.substr(first, text.find_last_not_of(' ') - first + 1);
  if (typed.find_first_not_of("+-.0123456789") != std::string::npos) return std::nullopt;
  char* end = nullptr;
  const double value = std::strtod(typed.c_str(), &end);
  if (*end != 0 || !std::isfinite(value)) return std::nullopt;
  return value;
}

// What is wrong, or nothing once the field is set.
std::optional<std::string> set(model::Job& job, TitleField field, const TitleWords& words) {
  if (field == TitleField::JobName) job.name = words.text;
  if (field == TitleField::DatumNote) job.datumNote = words.text;
  if (field != TitleField::BenchMark) return std::nullopt;
  if (!job.site.benchMark) return "the job gives no bench mark";
  const auto level = levelOf(words.level);
  if (!level) return "the level is in metres, such as +0.185";
  job.site.benchMark->name = words.text;
  job.site.benchMark->level = *level;
  return std::nullopt;
}

}  // namespace

std::optional<std::string> textOfFile(const std::string& path) {
  std::ifstream in(path, std::ios::binary);
  if (!in) return std::nullopt;
  return std::string((std::istreambuf_iterator<char>(in)), {});
}

std::optional<std::string> changeJobFile(
    const std::string& path, const std::function<std::optional<std::string>(model::Job&)>& change,
    std::string* before, std::string* after) {
  const auto text = textOfFile(path);
  if (!text) return "the job file cannot be read";
  const model::ReadResult was = model::readJob(*text, path);
  if (!was.job) return "put the job file's problems right first";
  model::Job job = *was.job;
  if (auto wrong = change(job)) return wrong;
  const std::string changed = model::writeJob(*text, job);
  if (before) *before = *text;
  if (after) *after = changed;
  if (changed == *text) return std::nullopt;
  const model::ReadResult is = model::readJob(changed, path);
  if (!is.job) return model::firstError(is.problems);
  if (const auto failed = model::saveAtomically(path, changed)) return model::inOneLine(*failed);
  return std::nullopt;
}

std::optional<std::string> changeJobFile(const std::string& path, TitleField field,
                                         const TitleWords& words) {
  return changeJobFile(path, [&](model::Job& job) { return set(job, field, words); });
}

bool canChange(const std::string& path) {
  std::error_code ignored;
  return std::filesystem::is_regular_file(path, ignored) && access(path.c_str(), W_OK) == 0;
}

}  // namespace viewer
