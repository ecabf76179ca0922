// Bricks and blocks by the names they are sold under.
#pragma once

#include "model/job/job.h"

namespace model {

// Work sizes in metres; a course is the height with the bed joint that its market builds it to.
struct BrickFormatSizes {
  const char* name;  // as the job file spells it
  double length, width, height;
  double joint;   // cross joint
  double course;  // from bed to bed
  const char* source;
};

struct BlockFormatSizes {
  const char* name;
  double length, width, height;
  double joint;   // the units' own, which its course is made up with
  double course;  // from bed to bed
  const char* source;
};

const BrickFormatSizes& sizesOf(BrickFormat format);
const BlockFormatSizes& sizesOf(BlockFormat format);

// Their names as a key's choices: "UK|UK modular|...".
extern const char* const kBrickFormatNames;
extern const char* const kBlockFormatNames;

// Gives the build-up the sizes of its formats: of bricks the length, height, joint and with them
// the thickness of the outer leaf; of blocks length and height, and the thickness of the inner one.
// A height is what makes whole courses with `joint`, so that courses come out where beds are not
// as thick as cross joints.
void takeBrickSizes(WallBuildUp& walls, BrickFormat format);
void takeBlockSizes(WallBuildUp& walls, BlockFormat format);

}  // namespace model
