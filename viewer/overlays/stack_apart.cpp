#include "viewer/overlays/stack_apart.h"

#include <algorithm>

namespace viewer {

std::optional<std::vector<float>> stackApart(const std::vector<float>& wanted, float height,
                                             float from, float to) {
  const size_t n = wanted.size();
  if (float(n) * height > to - from) return std::nullopt;
  // With i heights taken off the i-th, "apart" becomes "not descending": pool those that descend
  // and give each pool its mean.
  struct Pool {
    double sum;
    size_t count;
    double mean() const { return sum / double(count); }
  };
  std::vector<Pool> pools;
  for (size_t i = 0; i < n; ++i) {
    pools.push_back({double(wanted[i]) - double(i) * height, 1});
    while (pools.size() > 1 && pools[pools.size() - 2].mean() > pools.back().mean()) {
      const Pool last = pools.back();
      pools.pop_back();
      pools.back().sum += last.sum;
      pools.back().count += last.count;
    }
  }
  const double low = from + height * 0.5;
  const double high = std::max(low, to - height * 0.5 - double(n ? n - 1 : 0) * height);
  std::vector<float> placed;
  placed.reserve(n);
  for (const Pool& pool : pools)
    for (size_t k = 0; k < pool.count; ++k)
      placed.push_back(float(std::clamp(pool.mean(), low, high) + double(placed.size()) * height));
  return placed;
}

}  // namespace viewer
