// Works built apart from each other put together.
#pragma once

#include "model/works/element.h"

namespace model {

// As if what built `part` had gone on in `works`: its elements, units and frames come after those
// there. Leaves `part` empty.
void appendWorks(Works& works, Works part);

}  // namespace model
