// The inner leaf laid dry in blocks. Nobody sees its perpends, so that the joints keep to one grid
// along the wall and what does not come out is cut at corners and jambs.
#pragma once

#include <array>
#include <vector>

#include "model/bond/pieces_between.h"
#include "model/settingout/wall_ring.h"
#include "model/walls/wall_layer.h"

namespace model {

struct BlockWall {
  // s of the ends of its blockwork, by course: in one the wall runs through to the far face of the
  // next, in the other it butts against it.
  std::array<double, 2> start{}, end{};
  bool mitredStart = false, mitredEnd = false;  // the corner is not square
  // By how much the back then begins, or ends, short of the front; less than nothing: beyond it.
  double shortStart = 0, shortEnd = 0;
  double grid = 0;  // s of a joint of course 0
};

struct BlockBond {
  PieceLimits limits;
  BlockBondKind kind = BlockBondKind::Half;
  std::vector<BlockWall> walls;
};

// No piece is shorter than a quarter of a block, less its joint (common practice, no source).
BlockBond deriveBlockBond(const Job& job, const SettingOut& settingOut);
// The same for a leaf of blocks from `outer` to `inner` inside the face of any walls.
BlockBond blockBondRound(const WallBuildUp& walls, const WallRing& ring, double outer,
                         double inner);

// Course number `course` of a wall, around what is open at its level; `open` are lengths from jamb
// to jamb.
std::vector<LaidPiece> layBlocks(const BlockBond& bond, size_t wall, int course,
                                 const std::vector<Span>& open);

}  // namespace model
