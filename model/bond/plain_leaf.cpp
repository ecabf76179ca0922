#include "model/bond/plain_leaf.h"

#include <array>
#include <cmath>

#include "model/bond/leaf_units.h"
#include "model/settingout/coursing.h"

namespace model {

namespace {

std::vector<CourseBand> bandsBetween(const WallBuildUp& walls, double foot, double top) {
  const double course = walls.blockHeight + walls.joint;
  const double whole = top - cutBlockCourse(walls, top - foot);
  const int count = static_cast<int>(std::lround((whole - foot) / course));
  std::vector<CourseBand> bands;
  for (int i = 0; i < count; ++i)
    bands.push_back({foot + i * course, i + 1 < count ? foot + (i + 1) * course : whole, i});
  if (whole < top) bands.push_back({whole, top, count});
  return bands;
}

}  // namespace

LaidLeaf layPlainLeaf(const WallBuildUp& walls, const BlockBond& bond, size_t wall,
                      const WallLayer& layer, double foot, double top) {
  const std::array<bool, 2> mitres{bond.walls[wall].mitredStart, bond.walls[wall].mitredEnd};
  LaidLeaf leaf;
  leaf.frame = frameOf(layer);
  leaf.bands = bandsBetween(walls, foot, top);
  for (const CourseBand& band : leaf.bands) {
    leaf.firstOf.push_back(leaf.units.size());
    MasonryUnit unit;
    unit.z0 = band.bottom + walls.joint;
    unit.z1 = band.top;
    if (unit.height() < kLeastUnit) continue;
    unit.d0 = static_cast<float>(layer.outer);
    unit.d1 = static_cast<float>(layer.inner);
    unit.course = static_cast<std::int16_t>(band.number);
    const bool split = unit.height() < walls.blockHeight - kSameUnit;
    for (const LaidPiece& piece : layBlocks(bond, wall, band.number, {})) {
      unit.s0 = piece.from;
      unit.s1 = piece.to;
      unit.piece = split           ? Piece::Split
                   : piece.special ? Piece::Special
                                   : pieceOfLength(piece.length(), walls.blockLength, walls.joint);
      setMitres(layer, mitres, walls.joint, piece, unit);
      if (canBeLaid(leaf.frame, unit)) leaf.units.push_back(unit);
    }
  }
  leaf.firstOf.push_back(leaf.units.size());
  return leaf;
}

}  // namespace model
