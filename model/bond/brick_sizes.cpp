#include "model/bond/brick_sizes.h"

#include <algorithm>
#include <cmath>

namespace model {

int BrickSizes::halfBricksThick() const {
  const double halves = std::round((thickness + joint) / half());
  const bool inBricks = std::fabs(halves * half() - joint - thickness) < 0.006;
  return inBricks ? std::max(1, static_cast<int>(halves)) : 1;
}

BrickSizes brickSizes(const Job& job) {
  const WallBuildUp& walls = job.walls;
  BrickSizes sizes;
  sizes.brick = walls.brickLength;
  sizes.joint = walls.joint;
  sizes.least = std::min(walls.jointLeast.value_or(walls.joint - kJointGives), walls.joint);
  sizes.most = std::max(walls.jointMost.value_or(walls.joint + kJointGives), walls.joint);
  sizes.leastCut = std::min(walls.leastCut.value_or(sizes.halfBrick()), sizes.halfBrick());
  sizes.thickness = walls.outerLeaf;
  sizes.bond = walls.bond;
  return sizes;
}

}  // namespace model
