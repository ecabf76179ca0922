// One stretch of a leaf laid dry, between two stations at which the bond must come out: a pier, or
// the length under an opening.
//
// A station is the middle of a cross joint, or of one that would be there if the wall went on. At
// the first station of a stretch one of every two courses has a joint (the "first" of a stretch),
// the other (the "second") has the middle of a brick.
#pragma once

#include <array>
#include <vector>

#include "model/bond/brick_sizes.h"
#include "model/bond/pieces_between.h"

namespace model {

// How a stretch is filled. `odd`: its last station has its joint in the other course than the
// first.
struct StretchFit {
  bool odd = false;
  int halfBricks = 0;  // nearest, of that parity
  bool regular = false;
  double joint = 0;  // cross joints of a regular one
  double over = 0;   // metres longer (+) than that many half bricks; what bricks are cut for
  // Joints inside the stretch, from its first station: of the course with a joint there, and of the
  // other.
  std::array<std::vector<CrossJoint>, 2> joints;
  std::array<std::vector<double>, 2> cuts;  // lengths of the pieces in the broken bond
  double lap = 0;                           // least, of a joint of one course over one of the other
  bool shortCut = false;                    // a piece shorter than allowed
  bool pattern = false;  // broken because the bond from both ends of the wall does not meet
};

// What the ends of a stretch are. Under an opening the joints that stand in line with its jambs lie
// in the stretch and give as those between them do.
enum class StretchEnds { Pier, UnderOpening };

// The better of both ways, or the one that `odd` asks for. `length` between the stations, metres.
// Whole bricks with joints between the limits come first; else as many whole bricks as there is
// room for from both ends and equal cut ones in the middle, as few as lap by a quarter.
StretchFit fitStretch(const BrickSizes& sizes, double length, StretchEnds ends = StretchEnds::Pier);
StretchFit fitStretch(const BrickSizes& sizes, double length, bool odd, StretchEnds ends);
// How many cross joints of one course take up what a stretch of so many half bricks is over.
double jointsThatGive(int halfBricks, StretchEnds ends);

// What a stretch is nearest to, whichever course comes at its end.
struct BrickSize {
  int halfBricks = 0;
  double over = 0;  // metres longer (+) than that
};
BrickSize nearestBrickSize(const BrickSizes& sizes, double length);

// Is the first the better bond? Regular before broken, no short cuts, laps, then fewer cuts.
bool betterFit(const BrickSizes& sizes, const StretchFit& a, const StretchFit& b);

}  // namespace model
