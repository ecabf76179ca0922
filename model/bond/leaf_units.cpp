#include "model/bond/leaf_units.h"

#include <cmath>

namespace model {

namespace {
constexpr double kHair = 1e-6;
}

UnitFrame frameOf(const WallLayer& layer) {
  UnitFrame frame;
  frame.start = layer.wall->start;
  frame.along = layer.wall->along;
  frame.inward = -layer.wall->outward;
  frame.skewStart = (layer.startBack - layer.startFront) / layer.thickness();
  frame.skewEnd = (layer.endBack - layer.endFront) / layer.thickness();
  return frame;
}

void setMitres(const WallLayer& layer, const std::array<bool, 2>& mitres, double joint,
               const LaidPiece& piece, MasonryUnit& unit) {
  unit.mitredStart = mitres[0] && (std::fabs(piece.from - layer.startFront) < joint ||
                                   piece.from < layer.from - kHair);
  unit.mitredEnd =
      mitres[1] && (std::fabs(piece.to - layer.endFront) < joint || piece.to > layer.to + kHair);
}

Piece pieceOfLength(double length, double unit, double joint) {
  const auto is = [&](double other) { return std::fabs(length - other) < kSameUnit; };
  const double half = (unit - joint) / 2;
  if (is(unit)) return Piece::Whole;
  if (is(half)) return Piece::Half;
  if (is((unit + half) / 2)) return Piece::ThreeQuarter;
  return Piece::Cut;
}

bool canBeLaid(const UnitFrame& frame, const MasonryUnit& unit) {
  const double deep = unit.d1 - unit.d0;
  const double back = unit.length() - (unit.mitredStart ? frame.skewStart * deep : 0) +
                      (unit.mitredEnd ? frame.skewEnd * deep : 0);
  return back >= 0 && unit.length() >= kLeastUnit;
}

}  // namespace model
