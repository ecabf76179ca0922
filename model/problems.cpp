#include "model/problems.h"

#include <algorithm>

namespace model {

std::string format(const Problem& problem) {
  std::string text = problem.file;
  if (problem.place.line > 0) {
    text += ":" + std::to_string(problem.place.line) + ":" + std::to_string(problem.place.column);
  }
  text += problem.severity == Severity::Error ? ": error: " : ": warning: ";
  text += problem.what;
  if (!problem.instead.empty()) text += "; " + problem.instead;
  return text;
}

bool hasErrors(const Problems& problems) {
  return std::any_of(problems.begin(), problems.end(),
                     [](const Problem& p) { return p.severity == Severity::Error; });
}

}  // namespace model
