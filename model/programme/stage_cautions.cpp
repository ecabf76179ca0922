// Reminders and hold points. They never say that something may go ahead: that is for the competent
// people on the site.
#include "model/programme/stage_words.h"

namespace model {
namespace {

using K = StageKind;

constexpr const char* kDeference =
    " Reminder only: follow local law, your risk assessment and competent people.";

constexpr const char* kNoMachine = "No machine beside the cellar wall until the engineer says so.";

// Common practice after the Health and Safety Executive's public pages on excavations, scaffolds
// and temporary works; own words.
const char* reminder(StageKind kind) {
  switch (kind) {
    case K::SiteSetUp:
      return "Services first: plans, scan, dig by hand near them. Keep children and visitors out.";
    case K::Demolition:
      return "Services dead and capped before the first blow. Ask before touching old sheeting or "
             "lagging: it may need licensed people.";
    case K::TopsoilStrip:
      return "One person guides the digger. Stay out of its swing.";
    case K::CellarDig:
      return "No ground holds itself: nobody goes into a hole that has not been looked at this "
             "shift. Spoil and wheels back from the edge, a ladder in reach, no engines in the "
             "hole.";
    case K::CellarBlinding:
      return "The sides of the hole are looked at every shift before anyone goes down. Wet "
             "concrete "
             "burns: gloves, boots, wash it off.";
    case K::CellarSlab:
      return "Cap the bars. Wet concrete burns: gloves, boots, wash it off.";
    case K::CellarForms:
      return "Check ties, props and braces before the pour. Ladders and a proper platform to pour "
             "from.";
    case K::CellarWalls:
      return "Nobody below the forms while they fill. Watch the hose end; it whips. Wet concrete "
             "burns.";
    case K::CellarMembrane:
      return "Solvents and primers: keep air moving, no flames. The sides of the hole are still "
             "looked at every shift.";
    case K::TrenchDig:
      return "Trench depth is not the test, the ground is. Stop and ask at water, cracks, old "
             "walls, odd smells or another building's footing.";
    case K::TrenchBlinding:
      return "Nobody in a trench that has not been looked at this shift. Wet concrete burns: "
             "gloves, "
             "boots, wash it off.";
    case K::LevelPins:
      return "Nobody in a trench that has not been looked at this shift. Cap the pins.";
    case K::LinesBack:
      return "The dig is still open: look at its sides before anyone gets in.";
    case K::FoundationPour:
    case K::GroundSlab:
      return "Plan the lorry's way in, with someone guiding it. Look up for wires. Wet concrete "
             "burns.";
    case K::WallsBelowDampCourse:
      return "Look at the sides of the dig before anyone gets in. Two people or a machine for "
             "heavy blocks. Wet or extract the dust when cutting.";
    case K::RaiseCorners:
    case K::RunIn:
      return "Keep away from new walls in wind. Two people or a machine for heavy blocks. Wet "
             "or extract the dust when cutting.";
    case K::FloorOverCellar:
      return "Cover and fence every hole the moment it is there. Do not load a new floor.";
    case K::CellarBackfill:
      return kNoMachine;
    case K::TrenchBackfill:
      return "Fill both sides evenly: green walls push over.";
    case K::Oversite:
      return "Plates and rollers: feet and cables clear, and keep off the new walls.";
    case K::ScaffoldLift:
    case K::ScaffoldRoof:
      return "Only use what has been handed over. Looked at before use, every seven days, and "
             "after wind or change. Ties stay in.";
    case K::Lintels:
      return "Lift with the right number of hands. Props stay until their maker says otherwise.";
    case K::UpperFloor:
      return "Nobody walks on open joists: boards, nets or a platform below. Do not stack bricks "
             "on the new floor.";
    case K::WallPlate:
      return "Work from boards, never off the top of the wall. Nothing loose at the edge, nobody "
             "below.";
    case K::Gables:
      return "A bare gable is weak in wind until it is strapped to the roof: prop it, keep clear.";
    case K::Fascia:
      return "Work from the scaffold, never from a ladder leaned on the rafters. Two people to a "
             "long board; it swings in wind.";
    case K::Rafters:
    case K::RoofCovering:
      return "Nobody on the roof in wind, ice or rain. Braces first. Sheets fly. Keep the lifting "
             "path clear.";
    case K::WindowsAndDoors:
      return "Glass is heavy and cuts: gloves, two people to a big pane, the high ones from the "
             "scaffold.";
    case K::Render:
      return "Wet render burns: gloves, goggles, wash it off. Not in frost, driving rain or hot "
             "sun. "
             "Scaffold ties stay in until it is struck.";
    case K::StrikeScaffold:
      return "Strike in order, from the top, with a fenced zone below.";
    case K::FloorFinish:
      return "Screed and insulation dust: cover skin and eyes. Keep air moving while it dries.";
    case K::Stairs:
      return "An open well is a fall: its boards come off last thing before the flight goes in, "
             "nobody is over or under it meanwhile, and rails stand round it until the guarding is "
             "fixed. A flight is heavy: hands enough to lift it, and nobody on it before it is "
             "fixed.";
    case K::GardenFoundations:
      return "Services first: dig by hand near them. Nobody in a trench that has not been looked "
             "at "
             "this shift; cover it at night. Wet concrete burns: gloves, boots, wash it off.";
    case K::GardenWalls:
      return "A wall that stands by itself can fall on people: its height, thickness, piers and "
             "foundation are its designer's. Not in high wind. Nothing leans on it and nobody is "
             "beside it while it is green; no soil is heaped against it. Two people or a machine "
             "for "
             "coping stones.";
    case K::OutsideWorks:
      return "One person guides the machine: off the drains, away from the walls and from people.";
    default:
      return "";
  }
}

bool isOfWalls(const StageKey& key) { return key.kind == K::RaiseCorners || key.kind == K::RunIn; }

// Does one lift come before another, whatever is done in it?
bool isBefore(const StageKey& a, const StageKey& b) {
  return a.storey != b.storey ? a.storey < b.storey : a.lift < b.lift;
}

// The platform that a lift is built from: "this lift", "lift 2"; empty for work from the ground.
std::string scaffoldFor(const StageKey& key, const StageTraits& traits) {
  const StageKey* from = nullptr;
  for (const StageKey& platform : traits.scaffoldLifts)
    if (!isBefore(key, platform)) from = &platform;
  if (!from) return "";
  if (!isBefore(*from, key)) return "this lift";
  return from->storey == key.storey ? "lift " + std::to_string(from->lift)
                                    : "the lift under this storey";
}

// Of cellar walls that are laid and not cast; empty for other stages.
std::string reminderOfCellarBlocks(StageKind kind, CellarWallKind walls) {
  if (walls == CellarWallKind::FilledCavity && kind == K::CellarForms)
    return "Nothing props these walls: no earth, stacks or machine against them or beside them. "
           "The sides of the hole are looked at every shift. Two people or a machine for heavy "
           "blocks. Wet or extract the dust when cutting.";
  if (walls == CellarWallKind::FilledCavity && kind == K::CellarWalls)
    return "Fresh concrete pushes on the leaves: the designer says how high a lift, how long "
           "between them, which ties and props. Nobody between the wall and the side of the hole "
           "while it fills. Watch the hose end; it whips. Wet concrete burns.";
  if (walls == CellarWallKind::HollowBlock && kind == K::CellarWalls)
    return "Nothing props these walls: no earth, stacks or machine against them or beside them. "
           "Fresh concrete pushes on green blockwork: the designer says how high a lift. Two "
           "people "
           "or a machine for heavy blocks; cap the bars. Wet concrete burns.";
  return "";
}

// The reminder for this job's way of doing it.
std::string reminderFor(const StageKey& key, const StageTraits& traits) {
  if (const std::string blocks = reminderOfCellarBlocks(key.kind, traits.cellarWalls);
      !blocks.empty())
    return blocks;
  if (key.kind == K::CellarBackfill && !traits.slopedDig)
    return std::string(kNoMachine) + " Support comes out from the bottom up, as the fill rises.";
  if (key.kind == K::GroundSlab && traits.beamFloor)
    return "Beams by machine or with hands enough, nobody under them. Nobody stands on a block, "
           "and "
           "nothing is stacked on the floor, before the grout is hard.";
  if (key.kind == K::Fascia && !traits.scaffold)
    return "Work from boards with rails, never from a ladder leaned on the rafters. Two people to "
           "a long board; it swings in wind.";
  if (key.kind == K::WindowsAndDoors && !traits.scaffold)
    return "Glass is heavy and cuts: gloves, two people to a big pane.";
  if (key.kind == K::Render && !traits.scaffold)
    return "Wet render burns: gloves, goggles, wash it off. Not in frost, driving rain or hot sun.";
  if (const auto well = traits.wells.find(key); well != traits.wells.end())
    return std::string(reminder(key.kind)) + " " + well->second;
  const std::string scaffold = isOfWalls(key) ? scaffoldFor(key, traits) : "";
  if (!scaffold.empty())
    return "Only from the scaffold handed over for " + scaffold +
           ". Spread the stacks, nothing loose at the edge, nobody below. Keep away from new walls "
           "in wind.";
  return reminder(key.kind);
}

// What is to be minded on this job only, with a space after it.
std::string ownReminder(const StageKey& key, const StageTraits& traits) {
  if (isOfWalls(key)) {
    const bool high = traits.highWalls && !isBefore(key, *traits.highWalls);
    std::string text = high && !traits.alsoMindOnWalls.empty() ? traits.alsoMindOnWalls + " " : "";
    if (const auto here = traits.alsoMindIn.find(key); here != traits.alsoMindIn.end())
      text += here->second + " ";
    return text;
  }
  const auto own = traits.alsoMind.find(key.kind);
  return own == traits.alsoMind.end() ? "" : own->second + " ";
}

}  // namespace

std::string cautionFor(const StageKey& key, const StageTraits& traits) {
  std::string text = ownReminder(key, traits) + reminderFor(key, traits);
  while (text.ends_with(' ')) text.pop_back();
  return text.empty() ? text : text + kDeference;
}

// After the stages that councils' building-control pages usually list (Cheshire East, Merton,
// Rushmoor, East Riding, Oxford); the list for a job is agreed locally.
std::string holdPointFor(StageKind kind, const StageTraits& traits) {
  if (kind == K::CellarWalls && traits.cellarWalls == CellarWallKind::HollowBlock)
    return "Engineer usually sees the steel before each lift of the cores is filled.";
  switch (kind) {
    case K::SiteSetUp:
      return "Building control: notice of start. Neighbours' notices served, where any are due.";
    case K::SettingOut:
      return "Your own: a second person checks every length, the boundary and the floor level. The "
             "client sees it.";
    case K::CellarDig:
      return "Building control and the engineer usually see the bottom before it is covered.";
    case K::CellarSlab:
      return "Engineer and building control usually see the steel before the pour.";
    case K::CellarForms:
      return traits.cellarWalls == CellarWallKind::FilledCavity
                 ? "Engineer usually sees the steel, and the gap clean, before it is filled."
                 : "Engineer usually sees the steel before the second face closes.";
    case K::CellarMembrane:
      return "Waterproofing designer usually sees every joint before it is covered.";
    case K::TrenchDig:
      return "Building control usually sees the trenches before concrete.";
    case K::FoundationPour:
      return "Building control usually looks at the concrete before it is built on.";
    case K::GardenFoundations:
      return "Your own: line, boundary and bottom of the trench before concrete. The designer or "
             "building control where they have asked to see it.";
    case K::LinesBack:
      return "Your own: lengths and levels again before the first course.";
    case K::CellarBackfill:
      return "Engineer says when fill may go against the cellar walls.";
    case K::Oversite:
      return "Building control usually sees the oversite, and drains before they are covered.";
    case K::DampCourse:
      return "Building control usually sees the damp course.";
    case K::ScaffoldLift:
    case K::ScaffoldRoof:
      return "Scaffolder's handover note before anyone goes up.";
    case K::UpperFloor:
      return "Building control usually sees structural timbers before they are covered.";
    case K::Rafters:
      return "Building control usually sees the roof frame before it is covered.";
    case K::Completion:
      return "Building control: completion, before the building is lived in.";
    default:
      return "";
  }
}

}  // namespace model
