// Gables that go up past the roof, as far as the drawing alone gives them.
#pragma once

#include "model/job/validate.h"

namespace model {

// Does the drawing have a parapet on this wall, counted in the file's order?
bool hasParapet(const Job& job, size_t wall, size_t corners);

// False, with the problems added, where a parapet cannot be built: `gable` by wall.
bool validateParapets(const Validation& v, const PlanFacts& plan, const std::vector<bool>& gable);

}  // namespace model
