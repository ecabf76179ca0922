// The small moves of jambs and corners after which the outer leaf comes out in whole and half
// bricks.
#pragma once

#include <string>
#include <vector>

#include "model/bond/dry_bond.h"

namespace model {

// Metres. Of an opening that the bond is made for; 0 where it may stay. `shift` is that of its
// first jamb along the wall, + away from the wall's first corner; `wider` of its width.
struct OpeningMove {
  size_t opening = 0;  // into SettingOut::openings
  double shift = 0, wider = 0;
  double otherShift = 0;  // that of the next place the other way
};

struct WallMoves {
  size_t wall = 0;
  std::vector<OpeningMove> openings;  // those that must move
  double longer = 0;                  // the wall itself
  double otherLonger = 0;             // and the next length the other way
  bool none() const { return openings.empty() && longer == 0; }
};

// By wall. Each jamb in turn goes to the nearest half brick from the one before it; then the wall
// ends where the pattern of its bond does.
std::vector<WallMoves> brickSizeMoves(const DryBond& bond);

}  // namespace model
