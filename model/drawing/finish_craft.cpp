// Inside, garden and outside. Common practice, no source.
#include "model/drawing/stage_craft.h"

namespace model {
namespace {

using K = StageKind;

constexpr std::array kFinish{
    StageCraft{K::WindowsAndDoors,
               "Drill, level, packers, fixings, sealant and gun, tape",
               "Trolley or suckers for large panes",
               {"Measure each opening against its frame before unwrapping.",
                "Damp course and closers at the reveals in place.",
                "Pack plumb, level, square; check both diagonals.",
                "Fix, foam or seal as the maker says; open and close it."},
               {"Read the schedule: which way does it open?",
                "Keep the film on; clean mortar off at once."}},
    StageCraft{
        K::FloorFinish,
        "Level or laser, straight edge, float, knives, tape, rake",
        "Screed pump or mixer",
        {"Read the floor under it at each corner; edge strip.",
         "Insulation boards tight, joints taped; membrane if drawn.",
         "Dots or rails at the finished level; lay and level the screed.",
         "Close doors; dry slowly as its maker says."},
        {"A door threshold is the fixed level: work from it.",
         "Insulation on a wet floor stays wet.", "Nothing heavy on a screed that is not hard."}},
    StageCraft{K::Stairs,
               "Tape, level, plumb line, square, drill, saw, clamps",
               "Hands enough, or a hoist, for the flight",
               {"Measure floor to floor, plumb, at the well's edge; compare with the drawing.",
                "Boards off last thing; rails round the well; nobody under it.",
                "Flight in, level across the treads; fix it to the trimmer and a wall beside it.",
                "Newels plumb, handrails and guarding the same day; cover the treads."},
               {"Every rise is the same: the floor finishes top and bottom count.",
                "Cover the treads before the next trade comes up them."}},
    StageCraft{
        K::GardenFoundations,
        "Line, pegs, tape, level and staff, shovels",
        "Small excavator, concrete by barrow or chute",
        {"Peg the wall's line off the building, square; check the boundary.",
         "Dig to formation; have the bottom looked at.", "Pour in one go to the pegs; tamp level.",
         "Mark the wall's centre on the concrete."},
        {"Roots and services run along fences.", "Ask the neighbour before the first shovel."}},
    StageCraft{
        K::GardenWalls,
        "Trowels, lines, level, rod, square, jointers, saw with water",
        "Mixer, boards",
        {"Lay the first course out dry with the piers.",
         "Ends, corners and piers first; run in to the line.",
         "Damp course if drawn; bond the piers in.", "Cap or coping last; weep holes at the foot."},
        {"It stands alone in the wind: never higher in a day than it can bear.",
         "Both faces are seen: choose the fair face first."}},
    StageCraft{K::OutsideWorks,
               "Rakes, shovels, tape, level",
               "Small excavator, dumper, plate",
               {"Clear rubbish down to clean ground.",
                "Falls away from the walls; 150 clear under the damp course.",
                "Topsoil back; paving to its line and fall.", "Gullies and drain lids at level."},
               {"Compact trenches again before paving.",
                "Water towards the house is a call-back in the first storm."}},
    StageCraft{K::Completion,
               "Level and staff, tape, test gear, camera, brushes",
               "",
               {"Test drains and services; keep the sheets.",
                "Clean inside and out; walk through with the client.",
                "Write the levels as built on the plan.",
                "Hand over papers, keys, spare bricks and tiles."},
               {"List the snags with a date for each, and sign it off.",
                "A tidy site is what they remember."}},
};

}  // namespace

const StageCraft* finishCraft(StageKind kind, const Job& job) {
  (void)job;
  return craftIn(kFinish, kind);
}

}  // namespace model
