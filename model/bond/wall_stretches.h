// What the bond of a wall has to come out between: corners, jambs and movement joints.
#pragma once

#include "model/bond/dry_bond.h"

namespace model {

// A corner as one wall meets it, measured along that wall from the corner into it.
struct CornerLay {
  double station = 0;  // first one: that of the course in which the wall runs through
  double through = 0;  // where its brickwork begins then
  double butting = 0;  // and in the other course
  bool special = false;
};
CornerLay cornerLay(const BrickSizes& sizes, const Corner& corner);

// The wall with its stretches and openings that do not set its bond, nothing fitted yet.
WallBond stretchesOf(const BrickSizes& sizes, const Job& job, const SettingOut& out, size_t wall);

}  // namespace model
