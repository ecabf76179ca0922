// Cellar walls of blocks: laid like walls, filled like a pour. Those of concrete between forms are
// with the ground's work.
#include "model/drawing/stage_craft.h"

namespace model {

namespace {

using K = StageKind;

constexpr StageCraft kLeaves{
    K::CellarForms,
    "Trowels, line and pins, level, gauge rod, block saw, brushes, bucket for the droppings",
    "Mixer, saw with dust extraction or water, trestles inside, lifting help for heavy blocks",
    {"Snap both leaves on the slab; scrub the joint; starters straight and where they belong.",
     "First course of both leaves on a full bed, dry bond tried round the corners.",
     "Corners first, both leaves; then run in, gauged and plumbed course by course.",
     "Ties and steel as drawn while it rises; leave holes at the foot to clean through.",
     "Mortar off the inner faces and out of the foot each day; have steel and gap looked at."},
    {"Droppings in the gap are a plane for water: nothing is filled over them.",
     "Full joints: concrete that runs out leaves a hole behind the leaf.",
     "Green leaves carry no push: nothing leans on them and nothing is filled yet."}};

constexpr StageCraft kFilled{
    K::CellarWalls,
    "Pokers thin enough for the gap, shovels, level, line, curing sheets, brushes",
    "Small pump or skip, poker vibrators with one spare, props as the designer has them",
    {"Mortar hard, foot clean, holes at the foot closed; wet the leaves.",
     "First lift in layers, all the way round, poker into the layer below.",
     "Watch both leaves with a line: stop at the first sign of movement.",
     "The next lift when the designer's time is up; the joint roughened and clean.",
     "Level the top at the mark, cover it and keep it wet."},
    {"Too high a lift bursts the leaves: the designer says how high and how soon.",
     "A poker against a leaf or a tie loosens it.",
     "Wash what runs through the joints off the faces before it sets."}};

constexpr StageCraft kHollow{
    K::CellarWalls,
    "Trowels, line and pins, level, gauge rod, block saw, rods and pokers for the cores",
    "Mixer, saw with dust extraction or water, trestles, small pump or skip for the cores",
    {"Snap the faces on the slab; starters where the cores will be; dry bond tried first.",
     "First course on a full bed, with openings at the foot of the cores to clean through.",
     "Corners first, then run in; cores over one another, fins of mortar knocked off.",
     "Steel into the cores as drawn; have it looked at before they are filled.",
     "Fill each rise when its mortar is hard, all the way round, rodded down.",
     "Stop below the top of the block, so that the next rise keys in."},
    {"A core that is not seen clean is not filled.",
     "Blocks that are turned round or cut through a core: fill them by hand as they are laid.",
     "Filling a high, green rise bursts it: the engineer says how high."}};

}  // namespace

const StageCraft* cellarCraft(StageKind kind, const Job& job) {
  if (!job.cellar) return nullptr;
  const CellarWallKind walls = job.cellar->kind;
  if (walls == CellarWallKind::FilledCavity && kind == K::CellarForms) return &kLeaves;
  if (walls == CellarWallKind::FilledCavity && kind == K::CellarWalls) return &kFilled;
  if (walls == CellarWallKind::HollowBlock && kind == K::CellarWalls) return &kHollow;
  return nullptr;
}

}  // namespace model
