// One course of a wall: bricks from joint to joint, cut where something is open.
#include "model/bond/dry_bond.h"
#include "model/bond/pieces_between.h"

namespace model {

std::vector<LaidPiece> layCourse(const DryBond& bond, size_t wall, int above,
                                 const std::vector<std::array<double, 2>>& open) {
  const WallBond& own = bond.walls[wall];
  const size_t course = courseParity(above);
  const PieceLimits limits{bond.sizes.brick, bond.sizes.joint, bond.sizes.leastCut};
  std::vector<LaidPiece> all;
  for (const Span& part : solidParts(own.start.face[course], own.end.face[course], open)) {
    std::vector<LaidPiece> laid = piecesBetween(own.joints[course], part);
    const bool atStart = own.start.special && part[0] == own.start.face[course];
    const bool atEnd = own.end.special && part[1] == own.end.face[course];
    // A short leg of an angle brick is no sliver.
    if (atStart) laid.front().special = true;
    if (atEnd) laid.back().special = true;
    if (!atStart && !atEnd) shareSlivers(limits, laid);
    splitLongOnes(limits, laid);
    all.insert(all.end(), laid.begin(), laid.end());
  }
  return all;
}

}  // namespace model
