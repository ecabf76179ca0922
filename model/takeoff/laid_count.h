// Bricks and blocks counted from the units that are laid, and the mortar between them.
#pragma once

#include "model/takeoff/cut_plan.h"
#include "model/works/element.h"

namespace model {

// The units of some leaves, all of one size.
struct LaidCount {
  int whole = 0, half = 0, threeQuarter = 0;
  int closer = 0;            // cut along their length, two from one
  int cut = 0;               // to any other length
  int split = 0, raked = 0;  // cut in height; to the slope of a gable, each from one of its own
  int special = 0;           // angle bricks
  PieceLengths lengths;      // of halves, three-quarters and cuts
  PieceLengths heights;      // of what is cut in height
  double leaf = 0;           // m3, joints and all
  double units = 0;          // m3 of the units alone

  void add(const Works& works, const Element& leaf);
  int laid() const;
  double mortar() const { return leaf - units; }
};

// Whole units to buy, specials apart.
struct UnitsNeeded {
  int wholes = 0;
  double lost = 0;  // of them, in units: saw cuts and ends
};
// Of a unit's own length and height.
UnitsNeeded neededFor(const LaidCount& count, double length, double height);

// m3 of a unit, cut as it is.
double volumeOf(const MasonryUnit& unit, const UnitFrame& frame);

}  // namespace model
