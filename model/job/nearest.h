// The word that was probably meant.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace model {

// Letters to insert, drop, change or swap with a neighbour to get from `a` to `b`. Capitals,
// hyphens and spaces count as small letters and underscores. Stops counting over `limit`.
size_t editDistance(std::string_view a, std::string_view b, size_t limit);

// The nearest of `known`, when it is near enough to be a slip of the pen (about a third of the
// letters); the first of several equally near.
std::optional<std::string> nearest(std::string_view word, const std::vector<std::string>& known);

}  // namespace model
