#include "model/bond/bond_moves.h"

#include <algorithm>
#include <cmath>

namespace model {
namespace {

constexpr double kRounding = 0.001;

// The place nearest to `to` at which bricks come out when they begin at `from`; `to` itself when
// the joints take up the rest.
double comesOut(const BrickSizes& sizes, double from, double to) {
  const double halves = std::max(1.0, std::round((to - from) / sizes.half()));
  const double over = to - from - halves * sizes.half();
  const double joints = std::max(0.0, halves / 2 - 1);
  const double gives = joints * (over > 0 ? sizes.most - sizes.joint : sizes.joint - sizes.least);
  return std::fabs(over) < std::max(gives + 1e-6, kRounding) ? to : to - over;
}

}  // namespace

std::vector<WallMoves> brickSizeMoves(const DryBond& bond) {
  std::vector<WallMoves> moves;
  for (const WallBond& wall : bond.walls) {
    WallMoves found;
    found.wall = wall.wall;
    double moved = 0;  // of the station that the stretch begins at
    for (const DryStretch& stretch : wall.stretches) {
      const double next = comesOut(bond.sizes, stretch.from + moved, stretch.to) - stretch.to;
      if (stretch.opening && (moved != 0 || next != moved))
        found.openings.push_back({*stretch.opening, moved, next - moved});
      moved = next;
    }
    found.longer = moved;
    moves.push_back(found);
  }
  return moves;
}

}  // namespace model
