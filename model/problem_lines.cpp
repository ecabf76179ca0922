#include "model/problem_lines.h"

namespace model {

std::string inOneLine(const Problem& problem) {
  return problem.instead.empty() ? problem.what : problem.what + "; " + problem.instead;
}

std::optional<std::string> firstError(const Problems& problems) {
  for (const Problem& problem : problems)
    if (problem.severity == Severity::Error) return inOneLine(problem);
  return std::nullopt;
}

}  // namespace model
