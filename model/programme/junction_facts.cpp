// What is done, and minded, where new walls are joined to buildings that stand already.
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

std::string cornerOf(const SettingOut& out, const JunctionPlan& plan) {
  const WallLine& line = out.walls[plan.wall];
  return "corner " + out.corners[plan.atStart ? line.from : line.to].letter;
}

// About one junction, in the stages that do something for it.
void mind(const Job& job, const SettingOut& out, const JunctionPlan& plan, const StageKey& stage,
          StageTexts& texts) {
  const WallJunction& junction = job.junctions[plan.junction];
  const std::string name = "\"" + junction.building + "\"";
  std::string words = junction.kind == JunctionKind::StarterTies
                          ? "The strip at " + cornerOf(out, plan) +
                                " goes on sound masonry with its maker's fixings. "
                          : "Pockets at " + cornerOf(out, plan) + " are cut into " + name +
                                " only as wide and deep as drawn, one after another, once it is "
                                "known what its wall is made of and carries. ";
  words +=
      "The designer says whether it is right there to bond old and new, or to keep a movement "
      "joint between them.";
  if (job.site.buildings[plan.building].kind == BuildingKind::Neighbour)
    words +=
        " Nothing is cut into or fixed to a neighbour's wall before it is agreed as local "
        "law on party walls has it.";
  std::string& all = texts[stage];
  all += (all.empty() ? "" : " ") + words;
}

}  // namespace

StageTexts junctionWork(const Job& job, const SettingOut& out) {
  StageTexts texts;
  for (const StripPlan& strip : starterStrips(job, out))
    for (const StripPlan::Length& length : strip.lengths)
      texts[length.stage] += " At " + cornerOf(out, strip.plan) +
                             " fix the starter strip first, plumb, to " +
                             job.junctions[strip.plan.junction].building + " from " +
                             levelText(length.bottom) + " to " + levelText(length.top) + ", for " +
                             std::to_string(length.ties) + " ties in the beds of the outer leaf.";
  for (const JunctionCut& cut : junctionCuts(job, out)) {
    const WallJunction& junction = job.junctions[cut.plan.junction];
    if (junction.kind == JunctionKind::StarterTies) continue;
    for (const auto& [stage, count] : pocketsIn(cut))
      texts[stage] += " At " + cornerOf(out, cut.plan) + " cut " + std::to_string(count) +
                      (count == 1 ? " pocket" : " pockets") + " into " + junction.building +
                      " first; bricks go " + lengthText(junction.pocket) +
                      " into them, solid in mortar and pinned at the top.";
  }
  return texts;
}

StageTexts junctionCautions(const Job& job, const SettingOut& out) {
  StageTexts texts;
  for (const StripPlan& strip : starterStrips(job, out))
    for (const StripPlan::Length& length : strip.lengths)
      mind(job, out, strip.plan, length.stage, texts);
  for (const JunctionCut& cut : junctionCuts(job, out)) {
    if (job.junctions[cut.plan.junction].kind == JunctionKind::StarterTies) continue;
    for (const auto& [stage, count] : pocketsIn(cut)) mind(job, out, cut.plan, stage, texts);
  }
  return texts;
}

}  // namespace model
