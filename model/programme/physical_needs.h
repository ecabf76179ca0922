// What cannot be done before what, whoever plans it: read off the works themselves.
#pragma once

#include <string>
#include <vector>

#include "model/works/element.h"

namespace model {

// `after` cannot be taken before `before`; both are indices into the stages asked for.
struct PhysicalNeed {
  size_t before = 0, after = 0;
  std::string why;  // "the ground slab bears on the hardcore"
};

// For stages in their usual order, in which all needs are met. Geometry gives most of them: what
// bears on something, is cast or filled against it, is fixed to it, stands where something was
// dug out or taken down, and what must be there before it can be taken away. Boxes round the solids
// are compared, so that now and then a need is found that an exact look would not. The rest is what
// no touching shows: walls are laid from their scaffold, a cellar wall is propped before it is
// filled against. At most one for each pair of stages.
std::vector<PhysicalNeed> physicalNeeds(const std::vector<StageKey>& usual, const Works& works);

}  // namespace model
