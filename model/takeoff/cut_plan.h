// How many whole units the cut ones are made from.
#pragma once

#include <map>

namespace model {

// A saw takes this much of a brick or block at each cut; 3 to 5 mm: common practice, no source.
inline constexpr double kSawCut = 0.004;

// Pieces by length, in tenths of a millimetre, and how many of each.
using PieceLengths = std::map<int, int>;
int tenthsOf(double metres);

struct CutPlan {
  int wholes = 0;   // that are cut up
  double lost = 0;  // of their length, metres: saw cuts, and ends that no piece is cut from
};

// The longest pieces first, each from the shortest end that is left over and long enough, else from
// a whole unit. `unit` is its length, metres.
CutPlan planCuts(const PieceLengths& pieces, double unit);

}  // namespace model
