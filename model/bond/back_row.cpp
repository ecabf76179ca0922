#include "model/bond/back_row.h"

#include <algorithm>

namespace model {
namespace {

constexpr double kLeastPiece =
    0.020;  // metres: what is shorter is mortar. Common practice, no source

}  // namespace

void addBackRow(const BrickSizes& sizes, double backFrom, double backTo,
                std::vector<LaidPiece>& laid) {
  const double row = (sizes.thickness - sizes.joint) / 2;
  std::vector<LaidPiece> all;
  for (const LaidPiece& piece : laid) {
    const bool clear = piece.from > backFrom - 1e-6 && piece.to < backTo + 1e-6;
    LaidPiece front = piece, back = piece;
    if ((piece.header || piece.closer) && clear) {
      front.back = sizes.thickness;
      all.push_back(front);
      continue;
    }
    front.back = row;
    all.push_back(front);
    back.front = sizes.thickness - row;
    back.back = sizes.thickness;
    back.from = std::max(piece.from, backFrom);
    back.to = std::min(piece.to, backTo);
    back.header = back.closer = false;
    if (back.length() > kLeastPiece) all.push_back(back);
  }
  laid = std::move(all);
}

}  // namespace model
