#include "model/job/garden_outline.h"
#include "model/level_text.h"
#include "model/takeoff/items.h"
#include "model/takeoff/unit_rates.h"
#include "model/works/garden_plan.h"

namespace model {
namespace {

void countDampCourse(const Element& e, const GardenWall& wall, const WallBuildUp& walls,
                     Tally& tally) {
  const bool pier = e.id.find("/pier") != std::string::npos;
  const double width = gardenThickness(walls, pier ? wall.pierBricks : wall.bricks);
  tally.add({"Damp course, " + std::string(pier ? "garden piers, " : "garden walls, ") +
                 lengthText(width) + " wide",
             Unit::Metre, waste::kMembrane, 1, "right through; laps in the allowance"},
            e.quantity.amount, e.placed.stage);
}

}  // namespace

// Their bricks are counted with all others that are laid.
void countGardenWalls(const TakeoffInput& in, Tally& tally) {
  for (const Element& e : in.works.elements) {
    if (e.kind == ElementKind::GardenWall) {
      tally.add({"Brickwork, garden walls", Unit::CubicMetre, 0, 0, "with its joints"},
                volume(e.solid), e.placed.stage);
    } else if (e.kind == ElementKind::DampCourse && e.placed.stage.kind == StageKind::GardenWalls) {
      for (size_t i = 0; i < in.job.gardenWalls.size(); ++i)
        if (e.wall == gardenWallId(i))
          countDampCourse(e, in.job.gardenWalls[i], in.job.walls, tally);
    } else if (e.kind == ElementKind::Coping && e.placed.stage.kind == StageKind::GardenWalls) {
      const bool caps = e.id.find("/caps") != std::string::npos;
      tally.add({caps ? "Caps of piers" : "Coping stones", Unit::Each, 0, 1,
                 caps ? "one to each pier" : "600 at most, with open joints"},
                e.quantity.amount, e.placed.stage);
    }
  }
}

}  // namespace model
