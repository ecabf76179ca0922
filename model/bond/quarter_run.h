// One run of a bond with headers, between two ends at which its courses turn or stop, on a grid of
// quarter bricks.
#pragma once

#include <vector>

#include "model/bond/bond_pattern.h"

namespace model {

struct QuarterRun {
  BondKind bond = BondKind::English;
  int quarters = 0;         // from end to end
  size_t throughFirst = 0;  // the courses of this parity are through at its first end
  bool odd = false;         // and the others at its last end; else the same ones
  int breakAt = 0;          // where the bond is best broken if it must be
};

struct QuarterJoints {
  std::vector<std::vector<int>> joints;  // by course, ascending, without the ends
  bool broken = false;                   // the bond from both ends does not meet
  int from = 0, to = 0;                  // where it is broken
  int lap = 1;                           // least, of joints over one another, in quarters
};

// Does the bond that begins at one end arrive at the other?
bool comesOut(const QuarterRun& run);

// The bond from both ends, joined in the middle where it does not meet by the pieces that keep to
// it best and lap. There is always an answer; a short run may have no lap.
QuarterJoints layQuarters(const QuarterRun& run);

}  // namespace model
