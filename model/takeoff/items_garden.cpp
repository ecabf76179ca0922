#include <cmath>

#include "model/level_text.h"
#include "model/takeoff/items.h"
#include "model/takeoff/unit_rates.h"

namespace model {
namespace {

// What a piece takes of a brick: halves and closers come two from one.
double bricksFor(const MasonryUnit& unit) {
  return unit.piece == Piece::Half || unit.piece == Piece::Closer ? 0.5 : 1;
}

}  // namespace

void countGardenWalls(const TakeoffInput& in, Tally& tally) {
  const TakeoffItem bricks{"Bricks, garden walls", Unit::Each, waste::kBricks, 1,
                           "laid one by one; half bricks and closers two from a brick"};
  for (const Element& e : in.works.elements) {
    if (e.kind == ElementKind::GardenWall) {
      double count = 0;
      for (size_t i = e.firstUnit; i < e.firstUnit + e.unitCount; ++i)
        count += bricksFor(in.works.units[i]);
      tally.add({"Brickwork, garden walls", Unit::CubicMetre, 0, 0, "with its joints"},
                volume(e.solid), e.placed.stage);
      tally.add(bricks, count, e.placed.stage);
    } else if (e.kind == ElementKind::Coping) {
      const bool caps = e.id.find("/caps") != std::string::npos;
      tally.add({caps ? "Caps of piers" : "Coping stones", Unit::Each, 0, 1,
                 caps ? "one to each pier" : "600 at most, with open joints"},
                e.quantity.amount, e.placed.stage);
    }
  }
}

}  // namespace model
