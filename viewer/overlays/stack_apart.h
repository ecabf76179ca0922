// Moves numbers on a line just far enough apart to be read.
#pragma once

#include <optional>
#include <vector>

namespace viewer {

// `wanted` are the middles of texts of equal height, in ascending order. Returns middles that are
// at least `height` apart, in the same order, inside from..to with their whole height, and as near
// to the wanted ones as that allows (least squares). Nothing when they cannot all fit.
std::optional<std::vector<float>> stackApart(const std::vector<float>& wanted, float height,
                                             float from, float to);

}  // namespace viewer
