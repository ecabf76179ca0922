// Straight cuts on plan, split where they meet, so that they touch at shared ends only.
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "model/vec.h"

namespace model {

// A straight cut through the plan; where two cuts meet, both are split.
struct PlanCut {
  Vec2 a{0, 0}, b{0, 0};
};

// Plan points are kept as whole micrometres from the job's origin: every number of millimetres
// that a drawing gives is exact, and which side of a line a point lies on is decided exactly.
struct GridPoint {
  std::int64_t x = 0, y = 0;
  bool operator==(const GridPoint&) const = default;
};

GridPoint onGrid(const Vec2& p);
Vec2 offGrid(const GridPoint& p);

// +1 when c lies left of the line from a to b, -1 right, 0 on it. Exact.
int sideOf(const GridPoint& a, const GridPoint& b, const GridPoint& c);

struct Arrangement {
  std::vector<GridPoint> points;
  std::vector<std::array<std::uint32_t, 2>> edges;  // lower index first, no two alike
};

// Points closer than a few micrometres become one, the first; a point that close to a cut splits
// it. Coordinates up to 100 km. Cuts without length are dropped. Deterministic.
Arrangement arrange(const std::vector<PlanCut>& cuts);

}  // namespace model
