// One solid over several pieces of plan, each with an underside of its own.
#pragma once

#include <vector>

#include "model/geometry/solid.h"

namespace model {

// Anticlockwise; pieces that share an edge share the whole of it.
struct PrismPiece {
  Polygon plan;
  Plane bottom, top;
};

// The pieces together as one solid, with upright faces where the undersides of two neighbours part;
// their tops must meet. Points nearer than a micrometre count as one.
Solid steppedPrism(const std::vector<PrismPiece>& pieces);

// The parts of a plan piece before and after the level line where `distance` (a plane over the
// plan) is `at`; one of them may be empty. Both get the same points on the line.
struct CutPiece {
  Polygon before, after;
};
CutPiece cutWhere(const Polygon& plan, const Plane& distance, double at);

}  // namespace model
