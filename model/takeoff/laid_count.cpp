#include "model/takeoff/laid_count.h"

#include <algorithm>

namespace model {
namespace {

// The mean height of a unit under a slope that goes from `rake0` over its start to `rake1` over its
// end. Where the slope leaves the unit's top or meets its bed on the way, only what is between
// counts.
double rakedHeight(const MasonryUnit& unit) {
  const double full = unit.height();
  const double a = double(unit.rake0) - unit.z0, b = double(unit.rake1) - unit.z0;
  const double low = std::min(a, b), high = std::max(a, b);
  if (high <= 0) return 0;
  if (high - low < 1e-9) return std::clamp(low, 0.0, full);
  // The integral of the height, held between none and the unit's own, over the slope's heights.
  const auto upTo = [&](double h) {
    if (h <= 0) return 0.0;
    return h < full ? h * h / 2 : full * full / 2 + full * (h - full);
  };
  return (upTo(high) - upTo(low)) / (high - low);
}

}  // namespace

double volumeOf(const MasonryUnit& unit, const UnitFrame& frame) {
  const double depth = double(unit.d1) - double(unit.d0);
  double length = unit.length();
  if (unit.mitredStart) length -= frame.skewStart * depth / 2;
  if (unit.mitredEnd) length += frame.skewEnd * depth / 2;
  const double height = unit.piece == Piece::Raked ? rakedHeight(unit) : unit.height();
  return length * height * depth;
}

void LaidCount::add(const Works& works, const Element& element) {
  leaf += volume(element.solid);
  const UnitFrame& frame = works.frames[element.frame];
  for (size_t i = element.firstUnit; i < element.firstUnit + element.unitCount; ++i) {
    const MasonryUnit& unit = works.units[i];
    units += volumeOf(unit, frame);
    switch (unit.piece) {
      case Piece::Whole:
        ++whole;
        break;
      case Piece::Half:
        ++half;
        ++lengths[tenthsOf(unit.length())];
        break;
      case Piece::ThreeQuarter:
        ++threeQuarter;
        ++lengths[tenthsOf(unit.length())];
        break;
      case Piece::Cut:
        ++cut;
        ++lengths[tenthsOf(unit.length())];
        break;
      case Piece::Closer:
        ++closer;
        break;
      case Piece::Split:
        ++split;
        ++heights[tenthsOf(unit.height())];
        break;
      case Piece::Raked:
        ++raked;
        break;
      case Piece::Special:
        ++special;
        break;
    }
  }
}

int LaidCount::laid() const {
  return whole + half + threeQuarter + closer + cut + split + raked + special;
}

UnitsNeeded neededFor(const LaidCount& count, double length, double height) {
  const CutPlan cuts = planCuts(count.lengths, length), splits = planCuts(count.heights, height);
  UnitsNeeded needed;
  needed.wholes = count.whole + cuts.wholes + splits.wholes + (count.closer + 1) / 2 + count.raked;
  needed.lost = cuts.lost / length + splits.lost / height;
  return needed;
}

}  // namespace model
