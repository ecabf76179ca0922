// The sizes that the outer leaf is bonded with.
#pragma once

#include "model/job/job.h"

namespace model {

// Metres. A module is a brick and its joint; stations of the bond are half modules apart.
struct BrickSizes {
  double brick = 0.215;
  double joint = 0.010;
  double least = 0.008, most = 0.012;  // of the cross joints
  double leastCut = 0.1025;            // no shorter piece but a half brick
  double thickness = 0.1025;           // of the leaf
  BondKind bond = BondKind::Stretcher;

  double module() const { return brick + joint; }
  double half() const { return module() / 2; }
  double quarter() const { return module() / 4; }
  double closer() const { return quarter() - joint; }
  // A half brick: two and a joint are a brick.
  double halfBrick() const { return (brick - joint) / 2; }
  // A quarter of the module, less what the joints give: less lap of one brick over another is no
  // bond. From memory.
  double leastLap() const { return quarter() - kJointGives; }
  // Half bricks that the leaf is thick: 1 for one laid of stretchers, 2 for a one-brick wall.
  int halfBricksThick() const;
};

BrickSizes brickSizes(const Job& job);

}  // namespace model
