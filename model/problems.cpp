#include "model/problems.h"

#include <algorithm>
#include <limits>

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

void sortByPlace(Problems& problems) {
  const auto comesBefore = [](const Problem& a, const Problem& b) {
    const int lineA = a.place.line > 0 ? a.place.line : std::numeric_limits<int>::max();
    const int lineB = b.place.line > 0 ? b.place.line : std::numeric_limits<int>::max();
    return lineA != lineB ? lineA < lineB : a.place.column < b.place.column;
  };
  std::stable_sort(problems.begin(), problems.end(), comesBefore);
}

bool hasErrors(const Problems& problems) {
  return std::any_of(problems.begin(), problems.end(),
                     [](const Problem& p) { return p.severity == Severity::Error; });
}

}  // namespace model
