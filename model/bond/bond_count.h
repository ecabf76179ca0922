// How many bricks and pieces the outer leaf takes, counted one by one.
#pragma once

#include <map>
#include <vector>

#include "model/bond/dry_bond.h"
#include "model/job/job.h"

namespace model {

// Lengths of pieces, whole millimetres.
using PieceCount = std::map<int, int>;

// Of one wall, from its concrete up to where the outer leaf ends at the eaves. What stands above
// that in a gable is cut to the rake and is not counted.
struct BondCount {
  int courses = 0;
  int whole = 0;
  int half = 0;    // snapped headers among them
  int closer = 0;  // cut along its length
  // Angle bricks by the corner's angle inside, whole degrees, each counted with the wall where its
  // long leg lies.
  std::map<int, int> special;
  PieceCount cut;       // all others
  double leastLap = 0;  // of a brick over the one below it, metres
};

// Lengths of a wall that are open, or have no concrete so low, or a lintel, half way up a course.
// `above` is the course's number over the damp course, from 0; below it from -1 down.
std::vector<std::array<double, 2>> openAt(const Job& job, const SettingOut& settingOut, size_t wall,
                                          int above);

// By wall.
std::vector<BondCount> countBond(const Job& job, const SettingOut& settingOut, const DryBond& bond);

}  // namespace model
