// The hand-made building with its walls laid brick by brick, for tests of what is drawn.
#pragma once

#include "model/model.h"

namespace support {

// sampleModel() with a leaf for each of its four walls: 40 courses of 75 from -0.5, bricks 215 long
// with joints of 10, half over half, the last of each course cut to what is left; walls take turns
// at the corners. Whole bricks but those, halves at every other start, and one split brick: in the
// south wall's sixth course the third brick is two, with a joint of 8 between them. All bricks of
// a wall are laid one after the other through its stage.
model::Model laidSample();

}  // namespace support
