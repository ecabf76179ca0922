#include "model/works/junction_cuts.h"

#include <algorithm>

#include "model/works/starter_strips.h"

namespace model {

namespace {

constexpr double kPastFace = 0.001;  // metres

void addPockets(const Job& job, const SettingOut& settingOut, const DryBond& bond,
                const Toothing& toothing, std::vector<JunctionCut>& cuts) {
  const JunctionPlan& plan = toothing.plan;
  const LeafPlan leaf = leafPlan(job, settingOut, plan.wall, LeafSide::Outer);
  const double course = job.walls.course();
  JunctionCut cut;
  cut.plan = plan;
  cut.what = "pocket";
  // As wide as the leaf.
  cut.place = beyondEnd(settingOut, plan, -kPastFace, toothing.deep, 0, leaf.layer.thickness());
  for (int i = 0; i <= toothing.lastCourse; ++i) {
    if (!toothing.holds(job, bond, i)) continue;
    const double bottom = settingOut.levels.dampCourse + i * course;
    if (toothing.holds(job, bond, i - 1))
      cut.holes.back().top = bottom + course;
    else
      cut.holes.push_back({bottom, bottom + course,
                           raisingStage(job, settingOut, leaf, bottom + course / 2), true});
  }
  if (!cut.holes.empty()) cuts.push_back(std::move(cut));
}

}  // namespace

StageKey raisingStage(const Job& job, const SettingOut& settingOut, const LeafPlan& leaf,
                      double level) {
  const Lift* in = &settingOut.lifts.front();
  for (const Lift& lift : settingOut.lifts)
    if (leafStop(job, settingOut, leaf, lift.bottom) < level) in = &lift;
  return {StageKind::RaiseCorners, in->storey, in->number};
}

std::vector<JunctionCut> junctionCuts(const Job& job, const SettingOut& settingOut) {
  std::vector<JunctionCut> cuts;
  if (job.junctions.empty() || settingOut.lifts.empty()) return cuts;
  const DryBond bond = deriveDryBond(job, settingOut);
  for (size_t wall = 0; wall < settingOut.walls.size(); ++wall)
    for (const Toothing& toothing : toothingsOf(job, settingOut, wall))
      addPockets(job, settingOut, bond, toothing, cuts);
  for (const StripPlan& strip : starterStrips(job, settingOut)) {
    const double into = kStripThickness - strip.plan.gap;
    if (into < 1e-6) continue;
    JunctionCut cut;
    cut.plan = strip.plan;
    cut.what = "place for the starter strip";
    cut.place = beyondEnd(settingOut, strip.plan, -kPastFace, kStripThickness, strip.d0, strip.d1);
    for (const StripPlan::Length& length : strip.lengths)
      cut.holes.push_back({length.bottom, length.top, length.stage});
    cuts.push_back(std::move(cut));
  }
  return cuts;
}

}  // namespace model
