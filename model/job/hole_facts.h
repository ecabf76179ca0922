// Openings as holes in their walls, for what must keep clear of them.
#pragma once

#include <string>
#include <vector>

#include "model/job/validate.h"

namespace model {

// Along its wall from the wall's first corner in the file; levels as deriveSettingOut() has them.
struct HoleFacts {
  const Opening* opening = nullptr;
  std::string name;  // `opening "Hall window"`
  double from = 0, to = 0;
  double sill = 0, head = 0;
};

// Those of one wall whose place is known.
std::vector<HoleFacts> knownHoles(const Validation& v, const PlanFacts& plan, size_t wall);

}  // namespace model
