// A hand-made building of boxes, small enough to know every face of, for tests of what is drawn.
#pragma once

#include "model/model.h"

namespace support {

// Stages: 0 dig, 1 foundation, 2 walls, 3 roof, 4 strike the scaffold.
//   ground   a block 12 x 12 m with its top at 0, a hole 8 x 6 in the middle, 1 m deep
//   spoil    fills the hole; goes down with stage 0
//   concrete 8 x 6 on the hole's bottom, -1.0 to -0.5; stage 1, whole
//   brick    four walls 0.3 thick, 8 x 6 outside, -0.5 to +2.5; stage 2, growing up
//   tile     a slab over the walls, 2.5 to 2.7; stage 3, whole
//   steel    a pole beside the building; up in stage 2, away in stage 4
// Everything lies round the origin; the model's own origin is shifted 100 m east to prove it.
model::Model sampleModel();

// Element indices in that order.
enum SampleElement : unsigned {
  kGround,
  kSpoil,
  kConcrete,
  kSouthWall,
  kNorthWall,
  kWestWall,
  kEastWall,
  kRoof,
  kPole,
};

}  // namespace support
