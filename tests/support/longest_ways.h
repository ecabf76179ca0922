// Longest ways through a network by a general graph library: a referee for the critical path
// method.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace test_support {

struct Edge {
  size_t from = 0, to = 0;
  double length = 0;
};

// From one vertex to each; -1e9 for those that no way leads to. Nothing when some way goes round
// and gets longer.
std::optional<std::vector<double>> longestWays(size_t vertices, const std::vector<Edge>& edges,
                                               size_t from);

}  // namespace test_support
