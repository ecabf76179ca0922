// What of an outer leaf's end goes into the wall of a building that it is bonded to.
#pragma once

#include <vector>

#include "model/bond/dry_bond.h"
#include "model/walls/junctions.h"

namespace model {

// The end of a wall that is toothed or block bonded.
struct Toothing {
  JunctionPlan plan;
  double deep = 0;     // from the end of the leaf to the back of the pockets
  int lastCourse = 0;  // the highest that may go in; the lowest is 0

  // Does so numbered a course over the damp course go in?
  bool holds(const Job& job, const DryBond& bond, int course) const;
};

// By wall of the job: those at its ends.
std::vector<Toothing> toothingsOf(const Job& job, const SettingOut& settingOut, size_t wall);

// Makes the pieces of a course longer where it goes in, or puts in one more where the wall does not
// run through at that end. No piece is longer than a brick.
void toothPieces(const Job& job, const DryBond& bond, const Toothing& toothing, int course,
                 double wallLength, std::vector<LaidPiece>& pieces);

}  // namespace model
