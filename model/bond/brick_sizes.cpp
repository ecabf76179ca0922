#include "model/bond/brick_sizes.h"

#include <algorithm>

namespace model {

BrickSizes brickSizes(const Job& job) {
  const WallBuildUp& walls = job.walls;
  BrickSizes sizes;
  sizes.brick = walls.brickLength;
  sizes.joint = walls.joint;
  sizes.least = std::min(walls.jointLeast.value_or(walls.joint - kJointGives), walls.joint);
  sizes.most = std::max(walls.jointMost.value_or(walls.joint + kJointGives), walls.joint);
  sizes.leastCut = std::min(walls.leastCut.value_or(sizes.halfBrick()), sizes.halfBrick());
  sizes.thickness = walls.outerLeaf;
  return sizes;
}

}  // namespace model
