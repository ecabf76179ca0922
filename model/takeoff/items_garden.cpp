#include "model/takeoff/items.h"

namespace model {

// Their bricks are counted with all others that are laid.
void countGardenWalls(const TakeoffInput& in, Tally& tally) {
  for (const Element& e : in.works.elements) {
    if (e.kind == ElementKind::GardenWall) {
      tally.add({"Brickwork, garden walls", Unit::CubicMetre, 0, 0, "with its joints"},
                volume(e.solid), e.placed.stage);
    } else if (e.kind == ElementKind::Coping) {
      const bool caps = e.id.find("/caps") != std::string::npos;
      tally.add({caps ? "Caps of piers" : "Coping stones", Unit::Each, 0, 1,
                 caps ? "one to each pier" : "600 at most, with open joints"},
                e.quantity.amount, e.placed.stage);
    }
  }
}

}  // namespace model
