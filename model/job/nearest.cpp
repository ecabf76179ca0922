#include "model/job/nearest.h"

#include <algorithm>
#include <cctype>

namespace model {

namespace {

char folded(char c) {
  if (c == '-' || c == ' ') return '_';
  return static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
}

}  // namespace

size_t editDistance(std::string_view a, std::string_view b, size_t limit) {
  const size_t gap = a.size() > b.size() ? a.size() - b.size() : b.size() - a.size();
  if (gap > limit) return limit + 1;
  std::vector<std::vector<size_t>> cost(a.size() + 1, std::vector<size_t>(b.size() + 1));
  for (size_t i = 0; i <= a.size(); ++i) cost[i][0] = i;
  for (size_t j = 0; j <= b.size(); ++j) cost[0][j] = j;
  for (size_t i = 1; i <= a.size(); ++i) {
    for (size_t j = 1; j <= b.size(); ++j) {
      const bool same = folded(a[i - 1]) == folded(b[j - 1]);
      cost[i][j] =
          std::min({cost[i - 1][j] + 1, cost[i][j - 1] + 1, cost[i - 1][j - 1] + (same ? 0 : 1)});
      const bool swapped = i > 1 && j > 1 && folded(a[i - 1]) == folded(b[j - 2]) &&
                           folded(a[i - 2]) == folded(b[j - 1]);
      if (swapped) cost[i][j] = std::min(cost[i][j], cost[i - 2][j - 2] + 1);
    }
  }
  return cost[a.size()][b.size()];
}

std::optional<std::string> nearest(std::string_view word, const std::vector<std::string>& known) {
  size_t best = std::max<size_t>(1, word.size() / 3);
  std::optional<std::string> found;
  for (const std::string& candidate : known) {
    const size_t distance = editDistance(word, candidate, best);
    if (distance < best || (distance == best && !found)) {
      best = distance;
      found = candidate;
    }
  }
  return found;
}

}  // namespace model
