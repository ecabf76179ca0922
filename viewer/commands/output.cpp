#include "viewer/commands/output.h"

#include <cstdio>
#include <filesystem>
#include <iostream>

#include "model/job/write_job.h"

namespace viewer {

int printOut(std::string_view text) {
  const size_t written = std::fwrite(text.data(), 1, text.size(), stdout);
  if (written == text.size() && std::fflush(stdout) == 0) return kWell;
  std::cerr << "stringcourse: the output could not be written\n";
  return kProblems;
}

int saveOut(const std::string& path, std::string_view bytes) {
  const auto problem = model::saveAtomically(path, bytes);
  if (!problem) return kWell;
  std::cerr << model::format(*problem) << "\n";
  return kProblems;
}

std::optional<std::string> wouldReplaceJob(const std::string& job, const std::string& out) {
  std::error_code ignored;
  if (!std::filesystem::equivalent(job, out, ignored)) return std::nullopt;
  return "--out \"" + out + "\" is the job file itself; choose another name";
}

std::optional<std::string> otherEnding(const std::string& out, const std::string& ending,
                                       const std::string& what) {
  const std::filesystem::path path(out);
  std::string own = path.extension().string();
  for (char& c : own)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  if (own == ending) return std::nullopt;
  return "\"" + out + "\": " + what + " is written as " + ending + "; name the file \"" +
         std::filesystem::path(path).replace_extension(ending).string() + "\"";
}

int wrongUsage(const std::string& what) {
  std::cerr << "stringcourse: " << what << "\n";
  return kUsage;
}

}  // namespace viewer
