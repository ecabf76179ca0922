// How heights come out in courses, as a table.
#pragma once

#include "model/exchange/table_part.h"

namespace model {

// Key "heights": every height from or to the damp course as drawn; below it what the concrete as
// read does to the first bed, and where block beds are not level with brick beds.
TablePart heightsPart(const Model& model);

}  // namespace model
