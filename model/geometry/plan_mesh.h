// The plan divided by straight cuts into triangles that share their corner points exactly.
//
// The triangles between the same cuts form a face: everything inside a face is alike, so what lies
// under and over it is asked once a face, at a point well inside.
// Constrained triangulation after S. W. Sloan, "A fast algorithm for generating constrained
// Delaunay triangulations", Computers & Structures 47(3), 1993.
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "model/geometry/plan_arrangement.h"

namespace model {

inline constexpr std::uint32_t kNoCell = 0xffffffffu;

struct PlanCell {
  std::array<std::uint32_t, 3> corners{};  // anticlockwise
  // Neighbour over the edge from corner k to k + 1; kNoCell outside.
  std::array<std::uint32_t, 3> beyond{kNoCell, kNoCell, kNoCell};
  std::array<bool, 3> cut{};  // that edge lies on a cut
  std::uint32_t face = 0;
};

struct PlanFace {
  Vec2 inside{0, 0};
  double area = 0;
};

struct PlanMesh {
  std::vector<Vec2> points;
  std::vector<PlanCell> cells;  // cover the cuts' convex hull
  std::vector<PlanFace> faces;
};

// Empty when the cuts lie on one line. Deterministic.
PlanMesh cutPlan(const std::vector<PlanCut>& cuts);

}  // namespace model
