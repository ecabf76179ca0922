// Triangles over points of the grid, with chosen edges forced in. The workings of cutPlan.
#pragma once

#include <vector>

#include "model/geometry/plan_mesh.h"

namespace model {

class PlanTriangulation {
 public:
  // Covers the points' convex hull. No two points are equal.
  explicit PlanTriangulation(const std::vector<GridPoint>& points);

  // Makes the line from a to b an edge and marks it as a cut. It must meet no other cut but at
  // shared ends; points on it split it.
  void force(std::uint32_t a, std::uint32_t b);
  // Turns edges that are not cuts for well-shaped triangles.
  void improve();

  std::vector<PlanCell>& cells() { return cells_; }

 private:
  struct Side {
    std::uint32_t cell = kNoCell, k = 0;
  };

  void sweep();
  std::uint32_t startHull(const std::vector<std::uint32_t>& order);
  void extendHull(std::uint32_t last, std::uint32_t p);
  std::uint32_t addCell(std::uint32_t a, std::uint32_t b, std::uint32_t c);
  void join(Side s, Side t);
  Side sideFrom(std::uint32_t a, std::uint32_t b) const;
  Side twin(Side s) const;
  bool convex(Side s) const;
  void flip(Side s);
  bool wantsFlip(Side s) const;
  // The side of a cell round `a` through which the line to `b` leaves it; or a point on the line.
  bool firstCrossed(std::uint32_t a, std::uint32_t b, Side& side, std::uint32_t& onLine) const;

  const std::vector<GridPoint>& points_;
  std::vector<PlanCell> cells_;
  std::vector<std::uint32_t> cellAt_;           // one cell round each point
  std::vector<std::uint32_t> next_, previous_;  // round the hull, anticlockwise
  std::vector<Side> hullSide_;                  // of the hull's edge from each point
};

}  // namespace model
