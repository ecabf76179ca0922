#include "model/bond/bond_moves.h"

#include <algorithm>
#include <cmath>

#include "model/bond/quarter_run.h"

namespace model {
namespace {

constexpr double kRounding = 0.001;
constexpr int kMostAside = 16;  // quarters: more than any bond repeats after

// The place nearest to `to` at which bricks come out when they begin at `from`; `to` itself when
// the joints take up the rest.
double comesOutAt(const BrickSizes& sizes, double from, double to, bool exactly, StretchEnds ends) {
  const double halves = std::max(1.0, std::round((to - from) / sizes.half()));
  const double over = to - from - halves * sizes.half();
  const double joints = jointsThatGive(static_cast<int>(halves), ends);
  const double gives = joints * (over > 0 ? sizes.most - sizes.joint : sizes.joint - sizes.least);
  const double leave = exactly ? kRounding : std::max(gives + 1e-6, kRounding);
  return std::fabs(over) < leave ? to : to - over;
}

// How much longer (`sign` 1) or shorter (-1) a wall that is `moved` longer already must be for the
// pattern of its bond to arrive at its other end; 0 when it does, or when it ends anywhere.
double patternMove(const DryBond& bond, const WallBond& wall, double moved, int sign) {
  const double length = wall.stretches.back().to + moved - wall.stretches.front().from;
  const int quarters = 2 * static_cast<int>(std::lround(length / bond.sizes.half()));
  for (int aside = 0; aside <= kMostAside; aside += 2) {
    const QuarterRun run{bond.sizes.bond, quarters + sign * aside, 0, wall.odd, 0};
    if (run.quarters > 0 && comesOut(run)) return sign * aside * bond.sizes.quarter();
  }
  return 0;
}

// What a wall itself must be longer, and the same the other way, when its jambs move it by `moved`.
void moveEnd(const DryBond& bond, const WallBond& wall, double moved, WallMoves& moves) {
  moves.longer = moved;
  moves.otherLonger = moved == 0 ? 0 : moved - std::copysign(bond.sizes.half(), moved);
  if (bond.sizes.bond == BondKind::Stretcher || !wall.straight.empty()) return;
  const double up = moved + patternMove(bond, wall, moved, 1);
  const double down = moved + patternMove(bond, wall, moved, -1);
  moves.longer = std::fabs(up) < std::fabs(down) ? up : down;
  if (up != down) moves.otherLonger = std::fabs(up) < std::fabs(down) ? down : up;
}

}  // namespace

std::vector<WallMoves> brickSizeMoves(const DryBond& bond) {
  std::vector<WallMoves> moves;
  for (const WallBond& wall : bond.walls) {
    WallMoves found;
    found.wall = wall.wall;
    double moved = 0;  // of the station that the stretch begins at
    for (const DryStretch& stretch : wall.stretches) {
      if (stretch.movement) continue;
      const StretchEnds ends = stretch.opening ? StretchEnds::UnderOpening : StretchEnds::Pier;
      const double next = comesOutAt(bond.sizes, stretch.from + moved, stretch.to,
                                     // An opening that moves is given its proper width as well.
                                     stretch.opening && moved != 0, ends) -
                          stretch.to;
      if (stretch.opening && (moved != 0 || next != moved))
        found.openings.push_back(
            {*stretch.opening, moved, next - moved,
             moved == 0 ? 0 : moved - std::copysign(bond.sizes.half(), moved)});
      moved = next;
    }
    moveEnd(bond, wall, moved, found);
    moves.push_back(found);
  }
  return moves;
}

}  // namespace model
