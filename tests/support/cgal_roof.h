// CGAL's straight skeleton, as an outside referee for roofs.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "model/geometry/polygon.h"

namespace model::test {

struct CgalRoof {
  std::vector<double> areas;                // of the face over each edge, square metres
  std::vector<std::array<double, 3>> tops;  // x, y, run of every node inside the outline
};

// One for each outline, anticlockwise. Nothing where CGAL gives up or crashes: version 5.5 now and
// then reads past its own tables on plans with walls in line, so it runs in a process of its own.
std::vector<std::optional<CgalRoof>> cgalRoofs(const std::vector<Polygon>& outlines);

}  // namespace model::test
