// Bricks and blocks as they are laid, one by one.
#pragma once

#include <cstdint>

#include "model/vec.h"

namespace model {

enum class Piece : std::uint8_t {
  Whole,
  Half,
  ThreeQuarter,
  Closer,   // a brick cut along its length: beside a quoin header
  Cut,      // any other length
  Split,    // cut in height
  Raked,    // cut to the slope of a gable
  Special,  // an angle brick
};

// Where the units of one leaf are measured from: s along the outer face of the wall's line, d into
// the wall.
struct UnitFrame {
  Vec2 start{0, 0};
  Vec2 along{1, 0};   // unit
  Vec2 inward{0, 1};  // unit
  // Units that are mitred at their start or end: by how much further along s their back ends than
  // their front, for each metre of d.
  double skewStart = 0, skewEnd = 0;
};

// One unit without its joints. Metres in its frame. Its bed joint lies under it, and a cross joint
// between it and the next.
struct MasonryUnit {
  double s0 = 0, s1 = 0;  // at d0 when mitred
  double z0 = 0, z1 = 0;
  float d0 = 0, d1 = 0;
  std::int16_t course = 0;  // over the damp course, from 0; below it from -1 down
  Piece piece = Piece::Whole;
  bool header = false;
  bool mitredStart = false, mitredEnd = false;
  // Where it is raked: level of the slope at s0 and s1, which it is cut to between them.
  float rake0 = 0, rake1 = 0;
  float when = 0;  // fraction of its element's own growth at which it is laid, 0 to 1

  double length() const { return s1 - s0; }
  double height() const { return z1 - z0; }
};

}  // namespace model
