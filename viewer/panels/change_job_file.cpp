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

std::optional<std::string> textOf(const std::string& path) {
  std::ifstream in(path, std::ios::binary);
  if (!in) return std::nullopt;
  return std::string((std::istreambuf_iterator<char>(in)), {});
}

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

std::optional<std::string> changeJobFile(const std::string& path, TitleField field,
                                         const TitleWords& words) {
  const auto text = textOf(path);
  if (!text) return "the job file cannot be read";
  const model::ReadResult before = model::readJob(*text, path);
  if (!before.job) return "put the job file's problems right first";
  model::Job job = *before.job;
  if (auto wrong = set(job, field, words)) return wrong;
  const std::string changed = model::writeJob(*text, job);
  if (changed == *text) return std::nullopt;
  const model::ReadResult after = model::readJob(changed, path);
  if (!after.job) return model::firstError(after.problems);
  if (const auto failed = model::saveAtomically(path, changed)) return model::inOneLine(*failed);
  return std::nullopt;
}

bool canChange(const std::string& path) {
  std::error_code ignored;
  return std::filesystem::is_regular_file(path, ignored) && access(path.c_str(), W_OK) == 0;
}

}  // namespace viewer
