// One course of a wall: bricks from joint to joint, cut where something is open.
#include <cmath>

#include "model/bond/back_rows.h"
#include "model/bond/bond_pattern.h"
#include "model/bond/dry_bond.h"
#include "model/bond/pieces_between.h"
#include "model/bond/reveal.h"

namespace model {
namespace {

constexpr double kOnJamb = 0.003;  // a length this near to a size is of it

void tellHeaders(const BrickSizes& sizes, std::vector<LaidPiece>& laid) {
  for (LaidPiece& piece : laid) {
    if (piece.special) continue;
    piece.header = std::fabs(piece.length() - sizes.halfBrick()) < kOnJamb;
    piece.closer = piece.length() < (sizes.halfBrick() + sizes.closer()) / 2;
  }
}

// Where the wall runs through a square corner, the rows behind its face leave room for the other
// wall.
std::array<double, 2> backRowOf(const DryBond& bond, const WallBond& wall, size_t parity) {
  const double room = bond.sizes.thickness + bond.sizes.joint;
  const auto inCorner = [&](const BondEnd& end) {
    const double out = std::fabs(end.face[0] - end.face[1]);
    return end.through[parity] && !end.special && out < bond.sizes.thickness;
  };
  return {inCorner(wall.start) ? wall.start.face[parity] + room : -1e9,
          inCorner(wall.end) ? wall.end.face[parity] - room : 1e9};
}

}  // namespace

std::vector<LaidPiece> layCourse(const DryBond& bond, size_t wall, int above,
                                 const std::vector<std::array<double, 2>>& open) {
  const WallBond& own = bond.walls[wall];
  const BrickSizes& sizes = bond.sizes;
  const size_t parity = courseParity(above), course = courseOf(sizes.bond, above);
  const bool plain = sizes.bond == BondKind::Stretcher;
  const double start = own.start.face[parity], end = own.end.face[parity];
  const PieceLimits limits{sizes.brick, sizes.joint, sizes.leastCut};
  std::vector<Span> gone = open;
  gone.insert(gone.end(), own.straight.begin(), own.straight.end());
  const Neighbours neighbours{own.joints[courseOf(sizes.bond, above + 1)],
                              own.joints[courseOf(sizes.bond, above - 1)]};
  std::vector<LaidPiece> all;
  for (const Span& part : solidParts(start, end, gone)) {
    std::vector<LaidPiece> laid = piecesBetween(own.joints[course], part);
    const bool cornerAtStart = part[0] == start, cornerAtEnd = part[1] == end;
    const bool atStart = own.start.special && cornerAtStart;
    const bool atEnd = own.end.special && cornerAtEnd;
    // A short leg of an angle brick is no sliver.
    if (atStart) laid.front().special = true;
    if (atEnd) laid.back().special = true;
    if (plain && !atStart && !atEnd) shareSlivers(limits, laid);
    if (!plain && !cornerAtStart) mendReveal(sizes, neighbours, true, laid);
    if (!plain && !cornerAtEnd) mendReveal(sizes, neighbours, false, laid);
    splitLongOnes(limits, laid);
    all.insert(all.end(), laid.begin(), laid.end());
  }
  if (hasHeaders(sizes.bond, course)) tellHeaders(sizes, all);
  if (sizes.halfBricksThick() > 1) {
    const std::array<double, 2> back = backRowOf(bond, own, parity);
    addBackRows(sizes, back[0], back[1], all);
  }
  return all;
}

}  // namespace model
