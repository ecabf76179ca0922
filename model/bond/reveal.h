// How a course ends at a jamb.
#pragma once

#include <vector>

#include "model/bond/dry_bond.h"

namespace model {

// What joints the courses over and under this one have.
struct Neighbours {
  const std::vector<CrossJoint>& over;
  const std::vector<CrossJoint>& under;
};

// No sliver beside a jamb: with the piece next to it it becomes one, or two that lap well over what
// is above and below, a header or a three-quarter at the jamb and a closer behind it where it fits.
void mendReveal(const BrickSizes& sizes, const Neighbours& neighbours, bool atStart,
                std::vector<LaidPiece>& laid);

}  // namespace model
