// The piers of solid walls. In every other course the wall goes through and skins of its pier stand
// before and behind it; in the others the pier is whole and the wall stops at it.
#include <algorithm>

#include "model/bond/solid_run.h"

namespace model {

namespace {

// In quarter bricks, s and d.
struct Block {
  int s0, s1, d0, d1;
};

std::vector<Block> blocksOf(int n, int m, bool through, bool atFreeEnd) {
  if (m == 2) {  // a brick pier of a half-brick wall
    if (!through) return {{0, 4, 0, 2}, {0, 4, 2, 4}};
    if (!atFreeEnd) return {{0, 4, 2, 4}};
    return {{0, 2, 0, 4}, {2, 4, 2, 4}};
  }
  if (m == 4) {  // two bricks, of a one-brick wall
    if (through)
      return {{0, 3, 0, 2}, {3, 5, 0, 2}, {5, 8, 0, 2}, {0, 3, 6, 8}, {3, 5, 6, 8}, {5, 8, 6, 8}};
    std::vector<Block> headers;
    for (const int d : {0, 4})
      for (int s = 0; s < 8; s += 2) headers.push_back({s, s + 2, d, d + 4});
    return headers;
  }
  if (n == 1) {  // a brick and a half, of a half-brick wall in its middle
    if (through) return {{0, 3, 0, 2}, {3, 6, 0, 2}, {0, 3, 4, 6}, {3, 6, 4, 6}};
    std::vector<Block> bats;
    for (const int d : {0, 3})
      for (int s = 0; s < 6; s += 2) bats.push_back({s, s + 2, d, d + 3});
    return bats;
  }
  // A brick and a half, of a one-brick wall flush with its face.
  if (through) return {{0, 3, 4, 6}, {3, 6, 4, 6}};
  return {{0, 4, 0, 2}, {4, 6, 0, 2}, {0, 2, 2, 6}, {2, 4, 2, 6}, {4, 6, 2, 6}};
}

}  // namespace

double pierBeforeFace(const SolidSizes& sizes, int pierHalfBricks) {
  const int more = pierHalfBricks - sizes.halfBricks;
  const int eachSide = more / 2;
  return more % 2 == 0 ? eachSide * sizes.half() : 0;
}

std::vector<SolidPiece> layPier(const SolidSizes& sizes, int pierHalfBricks, bool through,
                                const SolidPierPlace& place) {
  std::vector<SolidPiece> pieces;
  for (Block b : blocksOf(sizes.halfBricks, pierHalfBricks, through, place.atFreeEnd)) {
    if (place.fromEnd) {
      const int size = 2 * pierHalfBricks;
      b = {size - b.s1, size - b.s0, b.d0, b.d1};
    }
    SolidPiece piece;
    piece.s0 = b.s0 * sizes.quarter();
    piece.s1 = b.s1 * sizes.quarter() - sizes.joint;
    piece.d0 = b.d0 * sizes.quarter();
    piece.d1 = b.d1 * sizes.quarter() - sizes.joint;
    const int length = std::max(b.s1 - b.s0, b.d1 - b.d0);
    piece.header = b.d1 - b.d0 > b.s1 - b.s0;
    piece.piece = length == 4 ? Piece::Whole : length == 3 ? Piece::ThreeQuarter : Piece::Half;
    pieces.push_back(piece);
  }
  std::stable_sort(pieces.begin(), pieces.end(), [](const SolidPiece& a, const SolidPiece& b) {
    return a.s0 != b.s0 ? a.s0 < b.s0 : a.d0 < b.d0;
  });
  return pieces;
}

}  // namespace model
