// Whole units from joint to joint, and what is cut at corners, jambs and where joints do not help.
#pragma once

#include <array>
#include <vector>

#include "model/bond/laid_piece.h"

namespace model {

struct CrossJoint {
  double at = 0;     // its middle, metres along the wall
  double width = 0;  // metres
};

using Span = std::array<double, 2>;  // from, to

// Metres.
struct PieceLimits {
  double unit = 0.215;
  double joint = 0.010;
  double leastCut = 0.1025;
};

// What is left of [from, to] around lengths that are open, in order.
std::vector<Span> solidParts(double from, double to, std::vector<Span> open);

// The pieces of one part of a course, cut at both its ends; `joints` are in order.
std::vector<LaidPiece> piecesBetween(const std::vector<CrossJoint>& joints, const Span& part);
// No sliver beside an end: it and the piece next to it become one, or two alike.
void shareSlivers(const PieceLimits& limits, std::vector<LaidPiece>& laid);
// Nothing longer than a unit, as where the next wall's leaf is thinner than half of one.
void splitLongOnes(const PieceLimits& limits, std::vector<LaidPiece>& laid);

}  // namespace model
