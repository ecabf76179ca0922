// What has to be minded on this job and not on another: sides without scaffold, deep trenches,
// buildings beside the dig, doors over a drop.
#include <algorithm>
#include <cmath>

#include "model/checks/findings.h"
#include "model/level_text.h"
#include "model/programme/fact_text.h"
#include "model/programme/stage_words.h"
#include "model/settingout/gable_edges.h"
#include "model/walls/leaf_plan.h"
#include "model/works/scaffold_plan.h"

namespace model {
namespace {

using K = StageKind;

void mindBareSides(const Job& job, const SettingOut& out, StageTraits& traits) {
  const std::string bare = bareSidesInWords(job, out);
  if (bare.empty()) return;
  const bool several = bare.find(" and ") != std::string::npos;
  const std::string mind = "No scaffold along " + bare + ": agree with the scaffolder how " +
                           (several ? "those sides are" : "that side is") +
                           " reached before this stage.";
  for (const K kind : {K::ScaffoldLift, K::ScaffoldRoof, K::WallPlate, K::Gables, K::Rafters,
                       K::Fascia, K::RoofCovering, K::Render})
    traits.alsoMind[kind] = mind;
  traits.alsoMindOnWalls = mind;
  for (const Platform& platform : platforms(job, out))
    if (!traits.highWalls && platform.stage.kind == K::ScaffoldLift)
      traits.highWalls = platform.stage;
}

void mindBuildings(const Job& job, const SettingOut& out, StageTraits& traits) {
  std::vector<std::string> atTrenches, atCellar;
  for (const DigBeside& beside : digsBesideBuildings(job, out)) {
    const std::string& name = job.site.buildings[beside.building].name;
    const std::string words = name.empty() ? "a standing building" : "\"" + name + "\"";
    if (!beside.walls.empty()) atTrenches.push_back(words);
    if (beside.cellar) atCellar.push_back(words);
  }
  const auto mind = [](const std::vector<std::string>& names) {
    return "This dig goes deep beside the foundations of " + inSeries(names) +
           ": nobody digs there before an engineer has said how they are held meanwhile.";
  };
  if (!atTrenches.empty()) traits.alsoMind[K::TrenchDig] = mind(atTrenches);
  if (!atCellar.empty()) traits.alsoMind[K::CellarDig] = mind(atCellar);
}

void mindDeepTrenches(const SettingOut& out, StageTraits& traits) {
  const DeepTrenches deep = deepTrenches(out);
  if (deep.walls.empty()) return;
  const std::string depth = "Up to " + lengthText(deep.most) + " deep";
  std::string& dig = traits.alsoMind[K::TrenchDig];
  dig +=
      std::string(dig.empty() ? "" : " ") + depth +
      ": the sides are held up by support that an engineer has drawn, put in from the top as the "
      "digger goes down. Nobody goes in beyond it.";
  for (const K kind :
       {K::TrenchBlinding, K::LevelPins, K::FoundationPour, K::LinesBack, K::WallsBelowDampCourse})
    traits.alsoMind[kind] = depth + ": nobody goes in but inside the engineer's support.";
}

void mindDrops(const Job& job, const SettingOut& out, StageTraits& traits) {
  std::vector<std::string> doors;
  for (const OverDrop& drop : openingsOverDrops(job, out))
    doors.push_back(openingLabel(out, drop.opening) + " (" + lengthText(drop.drop) + ")");
  if (doors.empty()) return;
  const std::string drops =
      inSeries(doors) + (doors.size() > 1 ? " open" : " opens") + " over a drop";
  traits.alsoMind[K::WindowsAndDoors] = drops + ": keep " + (doors.size() > 1 ? "them" : "it") +
                                        " closed off until steps or a guard stand.";
  traits.alsoMind[K::Completion] = drops +
                                   ": steps or a guard, as the drawing says, before anybody uses " +
                                   (doors.size() > 1 ? "them." : "it.");
}

// What the heaviest lintel weighs, as concrete of the drawn size.
void mindLintels(const Job& job, const SettingOut& out, StageTraits& traits) {
  constexpr double kConcrete = 2400;  // kg/m3: common practice, no source
  constexpr double kOneLifts = 20;    // kg: common practice, no source
  double most = 0;
  size_t heaviest = 0;
  for (size_t i = 0; i < out.openings.size(); ++i) {
    const Opening& drawn = job.openings[out.openings[i].jobIndex];
    const double leaf = std::max(job.walls.outerLeaf, job.walls.innerLeaf);
    const double weight =
        (drawn.width + 2 * drawn.lintelBearing) * drawn.lintelHeight * leaf * kConcrete;
    if (weight > most) most = weight, heaviest = i;
  }
  if (most <= kOneLifts) return;
  traits.alsoMind[K::Lintels] =
      "Solid concrete over " + openingLabel(out, heaviest) + " weighs about " +
      std::to_string(10 * std::lround(most / 10)) +
      " kg a leaf: never one person alone, a machine where hands are too few, nobody under it. "
      "Nothing is built or stood on a lintel before its beds are firm.";
}

// What is cut through by a sheet, and what is heavier at its top, may tip. Common practice, no
// source.
void mindGardenWalls(const Job& job, StageTraits& traits) {
  bool sheet = false, corbel = false;
  for (const GardenWall& wall : job.gardenWalls) {
    sheet |= wall.dampCourse.has_value();
    corbel |= wall.corbelCourses > 0;
  }
  std::string& mind = traits.alsoMind[K::GardenWalls];
  if (sheet)
    mind +=
        "A sheet damp course parts a wall that stands by itself: only where its designer has drawn "
        "it, of the kind drawn, between full beds.";
  if (corbel)
    mind += std::string(mind.empty() ? "" : " ") +
            "Courses that stand out tip while they are green: one at a time, held down, nothing "
            "leans on them.";
  if (mind.empty()) traits.alsoMind.erase(K::GardenWalls);
}

void mindParapets(const Job& job, const SettingOut& out, StageTraits& traits) {
  std::vector<std::string> names;
  for (size_t i = 0; i < out.walls.size(); ++i)
    if (parapetOn(job, out, i)) names.push_back(out.walls[i].name);
  if (names.empty()) return;
  traits.alsoMind[K::Gables] =
      "Wind takes a parapet from both sides: its height, its ties and straps, and how kneelers and "
      "sloping copings are held, are the designer's (" +
      inSeries(names) + "). Props stay until that is done; nothing is stacked on it.";
}

// The hole is there as soon as its edges are.
void mindWells(const SettingOut& out, StageTraits& traits) {
  for (const StairFlight& flight : out.stairs) {
    const StageKey stage = flight.inTimber() ? StageKey{K::UpperFloor, static_cast<int>(flight.to)}
                                             : StageKey{K::FloorOverCellar};
    traits.wells[stage] =
        "The stairwell is boarded over as soon as its edges are there: boards that cannot slip, "
        "marked, and left until the stair goes in.";
  }
}

}  // namespace

std::string bareSidesInWords(const Job& job, const SettingOut& out) {
  std::vector<std::string> names;
  if (out.walls.empty()) return "";
  for (const BareSide& side : bareSides(job, out)) {
    const WallLine& wall = out.walls[side.wall];
    const bool most = side.to - side.from > wall.length / 2;
    const std::string words = most ? wall.name : "part of " + wall.name;
    if (names.empty() || names.back() != words) names.push_back(words);
  }
  return inSeries(names);
}

void addOwnCautions(const Job& job, const SettingOut& out, StageTraits& traits) {
  if (out.walls.empty()) return;
  mindBareSides(job, out, traits);
  mindBuildings(job, out, traits);
  mindDeepTrenches(out, traits);
  mindDrops(job, out, traits);
  mindLintels(job, out, traits);
  mindParapets(job, out, traits);
  mindGardenWalls(job, traits);
  mindWells(out, traits);
  traits.alsoMindIn = junctionCautions(job, out);
}

}  // namespace model
