// What is done, and minded, where new walls are joined to buildings that stand already.
#include <algorithm>

#include "model/level_text.h"
#include "model/programme/fact_text.h"
#include "model/works/junction_cuts.h"
#include "model/works/starter_strips.h"

namespace model {

namespace {

// What is cut at one corner, stage by stage: how many pockets.
std::map<StageKey, int> pocketsIn(const JunctionCut& cut) {
  std::map<StageKey, int> pockets;
  for (const JunctionCut::Hole& hole : cut.holes) ++pockets[hole.stage];
  return pockets;
}

std::string letterOf(const SettingOut& out, const JunctionPlan& plan) {
  const WallLine& line = out.walls[plan.wall];
  return out.corners[plan.atStart ? line.from : line.to].letter;
}

std::string cornersInSeries(const std::vector<std::string>& letters) {
  return (letters.size() > 1 ? "corners " : "corner ") + inSeries(letters);
}

// What is minded in one stage, at all its junctions: what holds for every one is said once.
struct Minded {
  std::vector<std::string> strips;                          // their corners
  std::map<std::string, std::vector<std::string>> pockets;  // corners by building
  bool neighbour = false;

  std::string text() const {
    std::string words;
    if (!strips.empty())
      words += "Starter strips go on sound masonry with their maker's fixings, at " +
               cornersInSeries(strips) + ". ";
    for (const auto& [building, corners] : pockets)
      words += "Pockets at " + cornersInSeries(corners) + " are cut into \"" + building +
               "\" only as wide and deep as drawn, one after another, once it is known what its "
               "wall is made of and carries. ";
    words +=
        "The designer says whether it is right there to bond old and new, or to keep a movement "
        "joint between them.";
    if (neighbour)
      words +=
          " Nothing is cut into or fixed to a neighbour's wall before it is agreed as local "
          "law on party walls has it.";
    return words;
  }
};

bool atNeighbour(const Job& job, const JunctionPlan& plan) {
  return job.site.buildings[plan.building].kind == BuildingKind::Neighbour;
}

// Pockets that are cut in one stage, as a sentence each and what goes into them, said once where
// it is the same.
struct Cuts {
  std::vector<std::string> sentences;
  std::vector<double> depths;

  std::string text() const {
    const bool alike = std::all_of(depths.begin(), depths.end(), [&](double depth) {
      return lengthText(depth) == lengthText(depths.front());
    });
    std::string words;
    for (size_t i = 0; i < sentences.size(); ++i) {
      words += sentences[i];
      if (alike && i + 1 < sentences.size())
        words += ".";
      else
        words += "; bricks go " + lengthText(depths[i]) +
                 " into them, solid in mortar and pinned at the top.";
    }
    return words;
  }
};

}  // namespace

StageTexts junctionWork(const Job& job, const SettingOut& out) {
  StageTexts texts;
  for (const StripPlan& strip : starterStrips(job, out))
    for (const StripPlan::Length& length : strip.lengths)
      texts[length.stage] += " At corner " + letterOf(out, strip.plan) +
                             " fix the starter strip first, plumb, to \"" +
                             job.junctions[strip.plan.junction].building + "\" from " +
                             levelText(length.bottom) + " to " + levelText(length.top) + ", for " +
                             std::to_string(length.ties) + " ties in the beds of the outer leaf.";
  std::map<StageKey, Cuts> cuts;
  for (const JunctionCut& cut : junctionCuts(job, out)) {
    const WallJunction& junction = job.junctions[cut.plan.junction];
    if (junction.kind == JunctionKind::StarterTies) continue;
    for (const auto& [stage, count] : pocketsIn(cut)) {
      cuts[stage].sentences.push_back(
          " At corner " + letterOf(out, cut.plan) + " cut " + std::to_string(count) +
          (count == 1 ? " pocket" : " pockets") + " into \"" + junction.building + "\" first");
      cuts[stage].depths.push_back(junction.pocket);
    }
  }
  for (const auto& [stage, cut] : cuts) texts[stage] += cut.text();
  return texts;
}

StageTexts junctionCautions(const Job& job, const SettingOut& out) {
  std::map<StageKey, Minded> minded;
  for (const StripPlan& strip : starterStrips(job, out)) {
    for (const StripPlan::Length& length : strip.lengths) {
      minded[length.stage].strips.push_back(letterOf(out, strip.plan));
      minded[length.stage].neighbour |= atNeighbour(job, strip.plan);
    }
  }
  for (const JunctionCut& cut : junctionCuts(job, out)) {
    const WallJunction& junction = job.junctions[cut.plan.junction];
    if (junction.kind == JunctionKind::StarterTies) continue;
    for (const auto& [stage, count] : pocketsIn(cut)) {
      minded[stage].pockets[junction.building].push_back(letterOf(out, cut.plan));
      minded[stage].neighbour |= atNeighbour(job, cut.plan);
    }
  }
  StageTexts texts;
  for (const auto& [stage, what] : minded) texts[stage] = what.text();
  return texts;
}

}  // namespace model
