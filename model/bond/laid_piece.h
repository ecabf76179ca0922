// One brick, block or piece of one, as it lies in its course.
#pragma once

namespace model {

// Metres. s runs along the outer face of the wall; d goes into it from the face of the leaf.
struct LaidPiece {
  double from = 0, to = 0;     // s of its ends on the leaf's front
  double front = 0, back = 0;  // d; 0 and 0: the whole thickness of the leaf
  bool special = false;        // a leg of an angle brick, mitred at the corner
  bool header = false;  // laid end on: a whole one in a thick wall, snapped in a half-brick leaf
  bool closer = false;  // cut along its length, beside a header at an end
  double length() const { return to - from; }
};

}  // namespace model
