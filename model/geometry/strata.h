// Things in layers over a plan mesh, and the closed solids that they make.
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "model/geometry/plan_mesh.h"
#include "model/geometry/solid.h"

namespace model {

// Levels at the three corners of a cell.
using CornerLevels = std::array<double, 3>;

// Every thing is the sum of prisms over cells; where two of its prisms share a face, there is
// none. Sides are split at every level that the thing uses on a shared upright line, so that its
// solid is closed. At one point of the plan, levels within a tenth of a millimetre are one: the
// first that was given, or the one of `exact` that is so near.
class Strata {
 public:
  // `mesh` must outlive this. `exact`: levels that a drawing gives, in any order.
  explicit Strata(const PlanMesh& mesh, std::vector<double> exact = {});

  // Gives `thing` (a number from 0) what lies over `cell` between the levels. Nothing is added
  // where the top is not above the bottom. Layers of one cell must not overlap.
  void add(std::uint32_t thing, std::uint32_t cell, const CornerLevels& bottom,
           const CornerLevels& top);

  // The solid of each thing, by number; empty for numbers without layers.
  std::vector<Solid> solids() const;

 private:
  friend class StrataSolid;

  struct Layer {
    std::uint32_t thing = 0, cell = 0;
    std::array<std::uint32_t, 3> bottom{}, top{};  // indices into levels_ of each corner's point
  };

  std::uint32_t levelIndex(std::uint32_t point, double level);

  const PlanMesh& mesh_;
  std::vector<double> exact_;                // lowest first
  std::vector<std::vector<double>> levels_;  // by point of the mesh
  std::vector<Layer> layers_;
};

}  // namespace model
