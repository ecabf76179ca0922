#include "model/drawing/client_words.h"

#include <algorithm>
#include <array>

namespace model {

namespace {

using K = StageKind;

struct Words {
  StageKind kind;
  const char* title;
  const char* what;
  const char* notice;
  const char* atEnd;
};

constexpr std::array kWords{
    Words{K::SiteSetUp, "Getting the site ready",
          "The crew fences the site, finds the pipes and cables in the ground, and brings a store "
          "and a lavatory. It also chooses one fixed point from which every height of the building "
          "will be measured.",
          "Lorries bring things; part of the garden or drive is closed off. People may knock to "
          "photograph the neighbours' walls and the road as they are.",
          "A fenced site with a gate, a store, and marks on the ground."},
    Words{K::Demolition, "Taking down what is in the way",
          "What stands where the building will be is taken down, from the roof to the ground, and "
          "taken away.",
          "Noise and dust for as long as it lasts, and lorries or skips in the road. Water, gas or "
          "electricity to that part are cut off first.",
          "Clear, empty ground."},
    Words{
        K::TopsoilStrip, "Taking off the good soil",
        "The dark soil at the top, which plants grow in and nothing can be built on, is scraped "
        "off and heaped up to be used again at the end.",
        "A digger for a day or so, and a heap of soil that stays until the end. Wheels bring mud; "
        "the road is swept.",
        "Bare ground under the building, and a heap of soil."},
    Words{K::SettingOut, "Marking the building on the ground",
          "The corners and walls are marked with pegs, low boards and strings, exactly where the "
          "drawing has them. Everything is measured twice, by two people.",
          "Quiet work. This is the best moment to walk round and see how large the building is and "
          "how near to the boundary: a change is cheap today.",
          "Strings that show every outer wall."},
    Words{K::CellarDig, "Digging out the cellar",
          "A digger takes out the hole for the cellar. Its sides are sloped or held up, and the "
          "bottom is trimmed by hand at the end.",
          "The noisiest and dirtiest part: a digger all day and many lorries taking the soil away. "
          "The hole is fenced; keep children and pets well away.",
          "A deep, fenced hole with a flat bottom."},
    Words{K::CellarBlinding, "A clean floor in the bottom of the hole",
          "A thin layer of weak concrete is poured over the soil, so that what follows stands on "
          "something clean and level.",
          "A concrete lorry or two, and half a day or so of noise.", "A grey, flat bottom."},
    Words{
        K::CellarSlab, "The floor slab of the cellar",
        "Steel bars are laid as the engineer has drawn them and looked at; then the concrete floor "
        "of the cellar is poured in one go.",
        "Several concrete lorries one behind the other, a pump, and a long day. The road may be "
        "tight that day.",
        "A concrete floor in the hole, with steel sticking up for the walls."},
    Words{K::CellarForms, "Moulds for the cellar walls",
          "Panels are put up on both sides of where the walls will be, with steel between them, to "
          "hold the wet concrete in shape.",
          "Hammering, and panels coming by lorry or crane.",
          "Two rows of panels, propped and ready to be filled."},
    Words{K::CellarWalls, "The cellar walls",
          "Concrete is poured between the panels in layers, all the way round. Some days later the "
          "panels come off.",
          "Concrete lorries and a pump for a day, then quiet days while it hardens.",
          "Bare concrete walls, still in the open hole."},
    Words{
        K::CellarMembrane, "Keeping water out of the cellar",
        "The outside of the cellar walls is covered without a gap with what keeps water out, and a "
        "drain is laid round its foot.",
        "Some smell of primer. Dry weather is needed, so days may shift.",
        "Dark, wrapped walls with a drain at their foot."},
    Words{K::TrenchDig, "Digging the trenches",
          "Trenches are dug for the concrete that carries the walls. An inspector usually looks at "
          "their bottoms before anything is poured.",
          "A small digger and heaps of soil. Trenches are fenced; keep away from the edges.",
          "Clean, narrow trenches under all outer walls."},
    Words{K::TrenchBlinding, "Firm bottoms for the trenches",
          "Where the drawing asks for it, weak concrete is poured first, so that the foundations "
          "stand on something clean and firm.",
          "A concrete lorry for part of a day.", "Grey bottoms in the trenches."},
    Words{K::LevelPins, "Marking the height of the foundations",
          "Short pins are set along the trenches to show exactly how high the concrete comes.",
          "Hardly anything: quiet measuring.", "Rows of pins in the trenches."},
    Words{
        K::FoundationPour, "Pouring the foundations",
        "The concrete that carries the walls is poured into the trenches and levelled.",
        "Concrete lorries for a day or part of one. After that nobody may step on it for a while.",
        "Flat strips of concrete in the trenches."},
    Words{
        K::LinesBack, "Marking the walls on the concrete",
        "The strings go back up and the edges of the walls are drawn on the concrete. Lengths and "
        "heights are checked once more.",
        "Quiet measuring.", "Chalk lines that show the walls."},
    Words{K::WallsBelowDampCourse, "The walls in the ground",
          "Bricks and blocks are laid from the foundations up to just above the ground. Holes are "
          "left for pipes.",
          "Bricks, sand and cement are brought; a mixer runs. Stacks stand about for weeks.",
          "Low walls that show the shape of the building."},
    Words{K::CavityFill, "Filling the gap in the low walls",
          "The outer walls are two walls with a gap between them. Below the ground that gap is "
          "filled with concrete so that the soil cannot push them together.",
          "A mixer for a day.", "Low walls, now solid in the ground."},
    Words{K::FloorOverCellar, "The floor over the cellar",
          "The cellar gets its lid, which is also the floor above.",
          "A crane or lifting machine for a day, and a lorry in the road.",
          "The cellar is covered; you can walk over it."},
    Words{K::CellarBackfill, "Filling in round the cellar",
          "Soil goes back round the cellar in thin layers that are pressed down one by one.",
          "A digger and a machine that thumps the ground: you may feel it in the house.",
          "The hole is gone."},
    Words{K::TrenchBackfill, "Filling in the trenches",
          "Soil goes back beside the low walls and is pressed down.",
          "A machine that thumps the ground for a day or so.",
          "Level ground beside the low walls."},
    Words{
        K::Oversite, "The bed under the floor",
        "Drains and pipes are laid first; then broken stone is spread under the floor and pressed "
        "down.",
        "Lorries with stone, and a machine that thumps. Pipes that come through the floor are "
        "fixed now: kitchen, bathrooms.",
        "A firm bed of stone between the walls."},
    Words{K::GroundSlab, "The ground floor",
          "The structural floor is made: the part that carries the later layers and you.",
          "Concrete lorries, or beams by crane, for a day; then nobody may load it for some days.",
          "A floor that you can walk on next day."},
    Words{K::DampCourse, "The layer that keeps damp down",
          "A strip that water cannot pass is laid on the low walls, so that damp does not climb up "
          "from the ground. The first row of bricks is laid out dry to settle where every joint "
          "comes.",
          "Quiet work.", "Low walls with a dark strip on top, ready for the walls you will see."},
    Words{K::ScaffoldLift, "Scaffold for the walls of the {storey}, step {lift}",
          "A firm of scaffolders puts up a platform, so that the bricklayers can go higher.",
          "Lorries with poles and a noisy day. Do not go on it, and let nobody else.",
          "A platform with rails round the building."},
    Words{K::RaiseCorners, "The corners of the {storey}, step {lift} of {lifts}",
          "Bricklayers begin at the corners: every row of bricks is measured there, and the walls "
          "between follow them.",
          "A mixer in the mornings; bricks and blocks come by lorry.",
          "Stepped corners with gaps between them. It looks odd, and it is right."},
    Words{
        K::RunIn, "The walls of the {storey}, step {lift} of {lifts}",
        "The walls between the corners are laid row by row along a string: the brick outside, the "
        "blocks inside, and the insulation between them.",
        "A mixer, and deliveries. In rain or frost the work may stand still for a day; new walls "
        "are covered at night.",
        "Walls that are level all round."},
    Words{K::Lintels, "Beams over the openings of the {storey}",
          "Beams are set over windows and doors to carry the walls above them.",
          "A lifting machine perhaps. From now on sizes of windows and doors are fixed.",
          "Window and door openings with their tops closed."},
    Words{K::UpperFloor, "The floor of the {storey}",
          "Timber beams are laid from wall to wall and boarded over.",
          "Hammering, and long timber in the road.", "A floor to stand on upstairs."},
    Words{K::ScaffoldRoof, "Scaffold for the roof",
          "The scaffold is taken up to the edge of the roof, with rails to keep people and tiles "
          "from falling.",
          "A noisy day with poles and boards.", "Scaffold all the way up."},
    Words{
        K::WallPlate, "The timber that the roof stands on",
        "A level timber is bedded on top of the walls and strapped down; the roof is fixed to it.",
        "Quiet work, some drilling.", "The walls have their last timber."},
    Words{K::Gables, "The pointed walls at the ends of the roof",
          "The end walls are built up to the slope of the roof and held with props until the roof "
          "holds them.",
          "A saw for bricks: dust is kept down with water.",
          "You can see how high the house will be."},
    Words{K::Rafters, "The frame of the roof", "Sloping timbers are cut, set and braced.",
          "Saws and nail guns, and long timber by lorry or crane.",
          "The whole shape of the house can be seen."},
    Words{K::Fascia, "The boards along the edge of the roof",
          "Boards close the edge of the roof all round; gutters are fixed to them later.",
          "Saws, paint.", "The edge of the roof is neat and closed."},
    Words{K::RoofCovering, "Covering the roof",
          "A sheet, battens and then tiles or slates: after this the rain stays out.",
          "Lorries with tiles and a hoist; some dust from cutting.", "A roof that sheds water."},
    Words{K::WindowsAndDoors, "Windows and doors", "Windows and outer doors are fixed and sealed.",
          "A lorry with frames. From now on the house can be locked.", "A closed house."},
    Words{K::Render, "The coat on the outer walls",
          "The walls are covered in coats that harden one after another.",
          "Sheets over the windows for days; it cannot be done in frost or hard rain.",
          "Smooth outer walls."},
    Words{K::StrikeScaffold, "Taking the scaffold down",
          "Everything high is finished and looked at first; then the scaffold goes.",
          "A noisy day with poles. Look at what is high up before it: later it is hard to reach.",
          "The house stands free."},
    Words{K::FloorFinish, "The upper layers of the floors",
          "Insulation, and over it the smooth layer that your floor covering lies on.",
          "Rooms cannot be used for days or weeks while it dries; keep windows as the crew asks.",
          "Floors at their final height, less your covering."},
    Words{
        K::Stairs, "The stair up to the {storey}",
        "The stair is brought in, set between its two floors and fixed, with its handrails and the "
        "guarding round the opening above.",
        "A large piece carried through the house, some sawing and drilling. Until the handrails "
        "are on nobody but the crew goes up.",
        "A stair to walk up, with its steps covered against scratches."},
    Words{K::GardenFoundations, "Foundations of the garden walls",
          "Small trenches are dug along the line of the garden walls and filled with concrete.",
          "A small digger and a concrete load. Your neighbour may want to see the line first.",
          "Concrete strips in the garden."},
    Words{K::GardenWalls, "The garden walls",
          "Garden walls are laid row by row, no more in a day than the fresh mortar can carry.",
          "Bricks and a mixer in the garden. Let nobody lean on a wall that is new.",
          "Garden walls with their top stones."},
    Words{
        K::OutsideWorks, "Putting the garden right",
        "Rubbish goes, soil comes back, and paths are laid so that rain runs away from the house.",
        "A digger in the garden. Beds and lawn are yours after this.",
        "Tidy ground round the house."},
    Words{
        K::Completion, "Testing and handing over",
        "Pipes and services are tested, the house is cleaned, and you walk round it together with "
        "the builder. You get the papers and the keys.",
        "Take your time on this walk: write down everything you see.", "Your house."},
};

// Cellar walls of blocks, by what they are of.
constexpr Words kLeaves{
    K::CellarForms, "The cellar walls, in blocks",
    "Two walls of blocks are laid side by side with a gap between them, and steel in the gap.",
    "Lorries with blocks and sand, a mixer, and a saw now and then. Then some quiet days while the "
    "mortar hardens.",
    "Two thin walls of blocks with a gap between them, in the open hole."};

constexpr Words kFilledLeaves{
    K::CellarWalls, "Filling the cellar walls",
    "The gap between the blocks is filled with concrete, a part of the height at a time, all the "
    "way round.",
    "A concrete lorry and a small pump on more than one day, with quiet days between.",
    "Cellar walls of blocks, full of concrete, still in the open hole."};

constexpr Words kHollowBlocks{
    K::CellarWalls, "The cellar walls, in blocks",
    "Hollow blocks are laid row by row with steel in their holes, and the holes are filled with "
    "concrete as the walls rise.",
    "Lorries with blocks and sand, a mixer or a small pump, and a saw now and then.",
    "Cellar walls of filled blocks, still in the open hole."};

// Null where the usual words hold.
const Words* ofBlocks(StageKind kind, const Job& job) {
  if (!job.cellar) return nullptr;
  const CellarWallKind walls = job.cellar->kind;
  if (walls == CellarWallKind::FilledCavity && kind == K::CellarForms) return &kLeaves;
  if (walls == CellarWallKind::FilledCavity && kind == K::CellarWalls) return &kFilledLeaves;
  if (walls == CellarWallKind::HollowBlock && kind == K::CellarWalls) return &kHollowBlocks;
  return nullptr;
}

// Null for the job's own stages.
const Words* wordsOf(StageKind kind, const Job& job) {
  if (const Words* words = ofBlocks(kind, job)) return words;
  const auto words = std::find_if(kWords.begin(), kWords.end(),
                                  [&](const Words& each) { return each.kind == kind; });
  return words == kWords.end() ? nullptr : &*words;
}

std::string withFilled(std::string text, const std::string& what, const std::string& with) {
  for (size_t at; (at = text.find(what)) != std::string::npos;) text.replace(at, what.size(), with);
  return text;
}

// Steps that a storey's walls are built in.
int liftsOf(const Model& model, int storey) {
  int most = 1;
  for (const Lift& lift : model.settingOut.lifts)
    if (lift.storey == storey) most = std::max(most, lift.number);
  return most;
}

// "ground floor" within a sentence; a name that is no plain word of the language stays as it is.
std::string storeyWords(const Model& model, int storey) {
  const auto& storeys = model.job.storeys;
  if (storeys.empty()) return "building";
  std::string name =
      storeys[std::clamp<size_t>(size_t(std::max(storey, 0)), 0, storeys.size() - 1)].name;
  const bool capitals = name.size() > 1 && name[1] >= 'A' && name[1] <= 'Z';
  if (!capitals && !name.empty() && name[0] >= 'A' && name[0] <= 'Z')
    name[0] = char(name[0] - 'A' + 'a');
  return name;
}

// Are pockets cut into a building that stays? They are counted one by one; a strip for ties wants
// no more than a little room.
bool cutsIntoBuilding(const Model& model, const StageKey& stage) {
  return std::any_of(model.works.elements.begin(), model.works.elements.end(),
                     [&](const Element& e) {
                       return e.kind == ElementKind::StandingBuilding && e.removed &&
                              e.removed->stage == stage && e.quantity.unit == Unit::Each;
                     });
}

}  // namespace

ClientStage clientStage(const Model& model, size_t index) {
  const Stage& stage = model.programme.stages[index];
  const Words* words = wordsOf(stage.key.kind, model.job);
  if (!words)
    return {stage.name, stage.what, "Ask the builder what this brings with it.", stage.atEnd};
  std::string title = withFilled(words->title, "{storey}", storeyWords(model, stage.key.storey));
  title = withFilled(title, "{lifts}", std::to_string(liftsOf(model, stage.key.storey)));
  title = withFilled(title, "{lift}", std::to_string(stage.key.lift));
  std::string notice = words->notice;
  if (stage.key.kind == K::RaiseCorners && cutsIntoBuilding(model, stage.key))
    notice +=
        " Holes are cut into the wall of the building that stands, to join the new one to it: "
        "noise, and dust on both sides of it.";
  return {title, words->what, notice, words->atEnd};
}

}  // namespace model
