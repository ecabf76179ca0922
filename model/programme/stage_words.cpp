// The words are common practice, no source; the order of the stages is in stage_order.cpp.
#include "model/programme/stage_words.h"

#include <algorithm>
#include <array>
#include <stdexcept>

namespace model {
namespace {

using K = StageKind;

constexpr std::array kGroundWords{
    StageWords{
        K::SiteSetUp, "site-set-up", "Set up the site",
        "Fence the site, mark the services on the ground, agree where lorries turn and where "
        "the heaps go. {photograph}{bench-mark}",
        "A fenced site with a bench mark that nobody can knock."},
    StageWords{
        K::Demolition, "demolish", "Take down what is in the way",
        "Cut off and cap the services, then take down {demolished} from the roof downward and "
        "clear it away.",
        "Clear ground where {demolished} stood."},
    StageWords{K::TopsoilStrip, "strip-topsoil", "Strip the topsoil",
               "Take a grid of levels of the ground as it is, then strip {topsoil} of topsoil from "
               "the building and the working strip round it into its own heap.",
               "Bare subsoil under the building; topsoil heaped apart for later."},
    StageWords{K::SettingOut, "set-out", "Set out the building",
               "Peg corners {corners}, put up profile boards clear of the dig and pull the lines. "
               "Check {lengths} twice.",
               "Boards and lines stand for {lined-walls}; the building can be seen on the ground."},
    StageWords{K::CellarDig, "dig-cellar", "Dig the cellar",
               "Lines off, boards stay. Dig in benches, {dig-sides}, down to formation at "
               "{cellar-formation}. Trim the last of it by hand just before blinding.",
               "A trimmed hole with its bottom at {cellar-formation}, {dug-sides}, fenced at the "
               "top, with "
               "a way out."},
    StageWords{
        K::CellarBlinding, "blind-cellar", "Blind the cellar bottom",
        "Pour a thin layer of lean concrete over the trimmed bottom, from {cellar-formation} "
        "up to {cellar-slab-underside}.{pins-in-blinding}",
        "A clean, hard floor to work from at {cellar-slab-underside}."},
    StageWords{
        K::CellarSlab, "cellar-slab", "Pour the cellar slab",
        "{cellar-pins-first}Fix the steel, starter bars and sleeves as the engineer has drawn "
        "them, then pour in "
        "one go up to top of concrete {cellar-slab-top}.",
        "The cellar slab, top of concrete {cellar-slab-top}."},
    StageWords{K::CellarForms, "cellar-forms", "Put up the cellar wall forms",
               "Stand the first face, fix the steel, box out pipes and openings, close the second "
               "face and prop both plumb. Mark the pour height {cellar-wall-top} inside the forms.",
               "Forms stand plumb and braced, ready for concrete to {cellar-wall-top}."},
    StageWords{K::CellarWalls, "cellar-walls", "Pour the cellar walls",
               "Pour in layers all the way round up to {cellar-wall-top}, keep it wet and covered, "
               "then strike the forms.",
               "Bare cellar walls to {cellar-wall-top}. They are not yet fit to hold earth back."},
    StageWords{K::CellarMembrane, "cellar-membrane", "Waterproof the cellar walls",
               "Clean and dry the walls, fix the membrane and its protection without a break, lay "
               "the drain round the foot.",
               "The cellar is wrapped from toe to top; every joint photographed."},
    StageWords{K::TrenchDig, "dig-trenches", "Dig the foundation trenches",
               "{dig} {foundation-width} wide to formation at {formations}, clean the bottom and "
               "{trench-sides}. Stop and ask where the bottom is soft or made ground.",
               "Clean trenches, formation at {formations}."},
    StageWords{K::TrenchBlinding, "blind-trenches", "Blind the trenches",
               "Pour {blinding} of lean concrete on the trench bottoms the same day as they are "
               "trimmed.",
               "Hard, clean trench bottoms."},
    StageWords{K::LevelPins, "level-pins", "Set the level pins",
               "Drive pins along the trenches and set their tops to top of concrete: {tops}. "
               "{shutter-steps}.",
               "Pin tops at {tops}, read back to the bench mark."},
    StageWords{K::FoundationPour, "pour-foundations", "Pour the foundations",
               "Pour each length in one go and tamp it to the pins: top of concrete {tops}.",
               "Foundations, top of concrete {tops}."},
    StageWords{
        K::LinesBack, "lines-back", "Lines back, mark the walls",
        "Pull the lines again, plumb them down and mark both leaves on the concrete. Check the "
        "{diagonals} again and take the level of the concrete at every corner.",
        "Wall faces marked on the concrete; as-built levels written down."},
    StageWords{
        K::WallsBelowDampCourse, "walls-below-damp-course", "Build up to the damp course",
        "Both leaves up together from the concrete{whole-courses} to {damp-course}{tied}, with "
        "ducts and drain lintels built in.{odd-height}",
        "Walls stand to {damp-course}, ready for the damp course."},
    StageWords{K::CavityFill, "cavity-fill", "Fill the cavity below ground",
               "When the mortar is firm, fill the foot of the cavity with lean concrete, sloped "
               "outward, stopping {cavity-fill}.",
               "The cavity is filled below ground and clear above."},
    StageWords{K::FloorOverCellar, "floor-over-cellar", "Lay the floor over the cellar",
               "Land the floor on the cellar walls, its underside at {cellar-wall-top}"
               "{hole-for-stair}. Fence or cover every hole in it.",
               "The cellar has its lid: the walls are held at head and foot."},
    StageWords{
        K::CellarBackfill, "backfill-cellar", "Fill in round the cellar",
        "With the floor over the cellar in, take the support out from the bottom up and fill "
        "in thin layers, each compacted, both sides of a corner evenly.",
        "Ground is back round the cellar; the hole is gone."},
    StageWords{K::TrenchBackfill, "backfill-trenches", "Fill in the trenches",
               "Fill both sides of the walls evenly in thin layers, each compacted.",
               "Trenches filled and compacted on both sides of the walls."},
    StageWords{K::Oversite, "oversite", "Make up under the floor",
               "From formation at {oversite}{or-lower} up to "
               "{slab-underside}: stone in compacted layers, blinded, with drains and sleeves in "
               "place first.{pins-on-hardcore}",
               "A firm, level bed at {slab-underside}."},
    StageWords{K::GroundSlab, "ground-slab", "Lay the ground floor",
               "{slab-pins-first}Check the depth on a grid, then bring the floor up to "
               "{structural-floor}{finish-later}.",
               "Ground floor at {structural-floor}, ready to walk on next day."},
    StageWords{K::DampCourse, "damp-course", "Bed the damp course",
               "Lay the first facing course out dry right round the outline{marked}, then bed the "
               "damp course on both leaves at {damp-course}, lapped at joints "
               "and corners.",
               "The damp course is down at {damp-course}; the bond is settled."},
};

constexpr std::array kWallWords{
    StageWords{K::ScaffoldLift, "scaffold", "Scaffold for lift {lift}, {storey}",
               "Scaffolders put up the platform for the walls from {lift-bottom} to {scaffold-to}, "
               "and hand "
               "it over in writing.",
               "A handed-over platform with rails, boards and a ladder."},
    StageWords{K::RaiseCorners, "corners", "Raise the corners, lift {lift}, {storey}",
               "Raise the corners to {corner-top}, {course}{inner-corner}, off the gauge rod: "
               "plumb on both "
               "faces, "
               "stepped back half a brick a course.{joined}",
               "Stepped corners at {corner-top}{inner-corner} with nothing between them yet."},
    StageWords{
        K::RunIn, "run-in", "Run in the walls, lift {lift}, {storey}",
        "Line from corner to corner, course by course up to {run-in-to}. Both leaves together"
        "{as-they-rise}.{joined}{rising-lintels}{odd-bearing} Cover the tops at night.",
        "{leaves-at-top}."},
    StageWords{K::Lintels, "lintels", "Set the lintels, {storey}",
               "Check the bearing course right round, then bed the lintels at {lintels} with full "
               "bearings{trays}.",
               "Openings are bridged at {lintels}."},
    StageWords{
        K::UpperFloor, "floor", "Joists and deck, {storey}",
        "Bear the joists at {joist-bearing}, strap them to the walls{trimmed} and deck over: "
        "top of deck {structural-floor}.{boarded}",
        "A floor to stand on at {structural-floor}{well-closed}."},
    StageWords{K::ScaffoldRoof, "scaffold-roof", "Scaffold for the roof",
               "Scaffolders bring boards and rails to the eaves at {eaves}, {gable-scaffold}and "
               "hand it over in writing.",
               "{rails} above the edge of the roof{no-rails}{gable-boards}."},
    StageWords{
        K::WallPlate, "wall-plate", "Bed the wall plates",
        "Bed the plates level on the inner leaf at {wall-top}, half-lapped {lapped}, and "
        "strap them down. Every rafter is cut from them, so take their levels and diagonals.",
        "Plates strapped down, top at {plate-top}."},
    StageWords{K::Gables, "gables", "Build up the gables",
               "Build the gables first and fit the rafters to them: both leaves up to the line of "
               "the rafters' underside, off a template, with raking props until they are strapped."
               "{rising-lintels}{parapets}",
               "Gables stand propped to the slope of the roof."},
    StageWords{K::Rafters, "rafters", "Cut and fix the rafters",
               "Cut a pattern pair and try it at both ends, then fix {roof-timbers} at "
               "{pitch} degrees, braced as they go{strap-gables}.",
               "The whole roof frame is up, {roof-held}."},
    StageWords{K::Fascia, "fascia", "Fix {edge-boards}",
               "Check the rafters' feet with a line and trim them plumb, then fix {edge-boards}: "
               "{mitred}straight by eye from end to end. Prime the cut ends first.",
               "The edge of the roof is closed all round, ready for the underlay and the gutters."},
    StageWords{
        K::RoofCovering, "roof-covering", "Cover the roof",
        "Underlay, battens to a counted gauge, then the covering from the eaves at {eaves} up "
        "to the {roof-top} at {ridge}, {slopes} loaded evenly.{flashing}",
        "The roof sheds water; top of the {roof-top} at {ridge}."},
    StageWords{K::WindowsAndDoors, "windows-and-doors", "Fit the {frames}",
               "Fix frames in their openings, plumb and packed, and seal round them.", "{closed}."},
    StageWords{
        K::Render, "render", "Render the walls",
        "Cover the frames and sills. Fix the bell beads level at {render-bottom} and the beads "
        "at corners and openings, then build up the coats to {render}, wall by wall from the top "
        "down. Let each coat harden before the next.",
        "Walls rendered {render} thick from {render-bottom} up to the roof."},
    StageWords{
        K::StrikeScaffold, "strike-scaffold", "Strike the scaffold",
        "Finish everything high first: pointing, gutters, wash-down. Then strike from the top "
        "down.",
        "Walls clear from ground to eaves."},
    StageWords{K::FloorFinish, "floor-finish", "{finish-floors} the floors",
               "Lay the {floor-layers} up to the finished floor: {finished-floors}.",
               "Finished floor at {finished-floors}."},
    StageWords{
        K::Stairs, "stairs", "Stair up to {storey}",
        "Take the boards off the well and fix {stair}: strings plumb and to the pitch, then "
        "{stair-steps}, newels, handrails and guarding, {stair-guard} high. Measure the rise "
        "between both floors before anything is cut.",
        "The stair stands from {stair-levels}, guarded where it is open and round the well."},
    StageWords{K::GardenFoundations, "garden-foundations", "Garden wall foundations",
               "Set out {garden-walls} square off the building. Dig to formation at "
               "{garden-formations}, have the bottom looked at, and pour in one go to top of "
               "concrete {garden-bases}.",
               "Strips for {garden-walls}, top of concrete {garden-bases}."},
    StageWords{K::GardenWalls, "garden-walls", "Build the garden walls",
               "Lay the first course out dry, with {garden-bonds}. Raise the ends, corners and "
               "piers first and run in to the line, no more than {day-rise} in a day, up to "
               "{garden-tops}.{garden-cut} Fill in both sides evenly{garden-coping}.",
               "{garden-stand} at {garden-tops}."},
    StageWords{K::OutsideWorks, "outside-works", "Put the ground back outside",
               "{spread-topsoil} paths that fall away from the walls and stay well under the "
               "damp course at {damp-course}.",
               "Tidy ground falling away from the building."},
    StageWords{K::Completion, "completion", "Tests and handing over",
               "Test drains and services, clean through, write down the levels as built, hand over "
               "certificates and spare bricks and tiles.",
               "A finished building with its papers."},
};

// Where this job does the same stage differently.
constexpr StageWords kLeanConcrete{
    K::TrenchBlinding, "blind-trenches", "Lean concrete beside the cellar",
    "Where the foundations cross what was dug for the cellar, fill up from the bottom of the dig "
    "with lean concrete to {lean-tops}, so that they stand on firm ground.",
    "Lean concrete beside the cellar at {lean-tops}, ready for the foundations."};

constexpr StageWords kBlindingAndLeanConcrete{
    K::TrenchBlinding, "blind-trenches", "Blind the trenches",
    "Where the foundations cross what was dug for the cellar, fill up from the bottom of the dig "
    "with lean concrete to {lean-tops}. Then pour {blinding} of it on the trench bottoms the same "
    "day as they are trimmed.",
    "Hard, clean trench bottoms; lean concrete beside the cellar at {lean-tops}."};

constexpr StageWords kCellarLeaves{
    K::CellarForms, "cellar-forms", "Build the leaves of the cellar walls",
    "Build both leaves of {cellar-leaf} blocks up together from the slab to {cellar-wall-top}: "
    "corners first, then the runs between them, at most {day-rise} in a day{cellar-top-course}. "
    "Steel and ties go into the {cellar-core} between them as the engineer has drawn them; clean "
    "the mortar off the faces inside and out of the foot.",
    "Two leaves of blocks to {cellar-wall-top} with {cellar-core} clear between them. Nothing "
    "holds them yet."};

constexpr StageWords kCellarFilled{
    K::CellarWalls, "cellar-walls", "Fill the cellar walls",
    "When the mortar is hard, fill the {cellar-core} between the leaves with concrete in "
    "{cellar-lifts}, each all the way round and worked into every corner, up to "
    "{cellar-wall-top}. The designer may ask for lower lifts.",
    "Cellar walls to {cellar-wall-top}. They are not yet fit to hold earth back."};

constexpr StageWords kHollowBlocks{
    K::CellarWalls, "cellar-walls", "Build the cellar walls in hollow blocks",
    "Lay the blocks, {cellar-wall} wide, from the slab up to {cellar-wall-top}: corners first, "
    "then the runs between them, at most {day-rise} in a day{cellar-top-course}. Keep the cores "
    "over one another and clean, with the steel in them as the engineer has drawn it. Fill the "
    "cores of each rise with concrete when its mortar is hard, before the next goes on.",
    "Cellar walls of filled blocks to {cellar-wall-top}. They are not yet fit to hold earth back."};

constexpr StageWords kSlopesFilled{
    K::CellarBackfill, "backfill-cellar", "Fill in round the cellar",
    "With the floor over the cellar in, fill the working space and the slopes in thin layers, each "
    "compacted, both sides of a corner evenly.",
    "Ground is back round the cellar; the hole is gone."};

constexpr StageWords kBeamsAndBlocks{
    K::GroundSlab, "ground-slab", "Lay the ground floor",
    "Check that the bearings are level, set the beams across with their underside at "
    "{slab-underside}, fill in the blocks and brush in the grout: top at "
    "{structural-floor}{finish-later}. The void under them, {void} or more, stays clear and "
    "vented.",
    "Ground floor of beams and blocks at {structural-floor}."};

const StageWords* differently(StageKind kind, const StageTraits& traits) {
  if (kind == K::TrenchBlinding && traits.besideCellar)
    return traits.blinding ? &kBlindingAndLeanConcrete : &kLeanConcrete;
  if (kind == K::CellarForms && traits.cellarWalls == CellarWallKind::FilledCavity)
    return &kCellarLeaves;
  if (kind == K::CellarWalls && traits.cellarWalls == CellarWallKind::FilledCavity)
    return &kCellarFilled;
  if (kind == K::CellarWalls && traits.cellarWalls == CellarWallKind::HollowBlock)
    return &kHollowBlocks;
  if (kind == K::CellarBackfill && traits.slopedDig) return &kSlopesFilled;
  if (kind == K::GroundSlab && traits.beamFloor) return &kBeamsAndBlocks;
  return nullptr;
}

template <typename Words>
const StageWords* among(const Words& words, StageKind kind) {
  const auto found =
      std::find_if(words.begin(), words.end(), [&](const StageWords& w) { return w.kind == kind; });
  return found == words.end() ? nullptr : &*found;
}

}  // namespace

const StageWords& wordsFor(StageKind kind, const StageTraits& traits) {
  if (const StageWords* words = differently(kind, traits)) return *words;
  if (const StageWords* words = among(kGroundWords, kind)) return *words;
  if (const StageWords* words = among(kWallWords, kind)) return *words;
  throw std::logic_error("a kind of stage without words");
}

}  // namespace model
