// Which item of a changed list was which before.
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

namespace model {

// One row of the alignment: an old item that became a new one, an old one that went (no `now`), or
// a new one that came (no `before`). Rows are in order of both lists.
struct AlignedPair {
  std::optional<size_t> before, now;
};

// Keeps as many items as possible that are the `same` in order; what lies between two of them is
// paired one by one, and the rest went or came.
std::vector<AlignedPair> align(size_t before, size_t now,
                               const std::function<bool(size_t, size_t)>& same);

}  // namespace model
