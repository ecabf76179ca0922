// A course that stands out past the one below: laid in headers, which tail back over it.
#pragma once

#include <vector>

#include "model/bond/solid_run.h"

namespace model {

// Headers side by side that fill a rectangle, s along it from 0 to `length`, d across it from 0 to
// `width`, metres. Where a header does not reach across, a piece closes the rest, at the back or,
// with `closedInFront`, at the front; where whole headers do not come out along it, two in its
// middle are cut.
std::vector<SolidPiece> layCorbelCourse(const SolidSizes& sizes, double length, double width,
                                        bool closedInFront);

}  // namespace model
