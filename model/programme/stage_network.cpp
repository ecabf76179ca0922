// What must be finished before what, whatever the order in which one crew takes the work.
#include <algorithm>
#include <iterator>
#include <set>

#include "model/programme/stage_order.h"

namespace model {
namespace {

using Kinds = std::vector<StageKind>;

// The kinds that stand directly before a kind. Common practice, no source, but for the cellar:
// backfill waits for the floor over it (Concrete Construction, "Backfilling basics").
Kinds before(StageKind kind) {
  using K = StageKind;
  switch (kind) {
    case K::Existing:
    case K::SiteSetUp:
      return {};
    case K::Demolition:
      return {K::SiteSetUp};
    case K::TopsoilStrip:
      return {K::Demolition};
    case K::SettingOut:
      return {K::TopsoilStrip};
    case K::CellarDig:
      return {K::SettingOut};
    case K::CellarBlinding:
      return {K::CellarDig};
    case K::CellarSlab:
      return {K::CellarBlinding};
    case K::CellarForms:
      return {K::CellarSlab};
    case K::CellarWalls:
      return {K::CellarForms};
    case K::CellarMembrane:
      return {K::CellarWalls};
    case K::TrenchDig:  // deepest first: a strip poured before the cellar dig is undermined by it
      return {K::CellarMembrane};
    case K::TrenchBlinding:
      return {K::TrenchDig};
    case K::LevelPins:
      return {K::TrenchBlinding};
    case K::FoundationPour:
      return {K::LevelPins};
    case K::LinesBack:
      return {K::FoundationPour};
    case K::WallsBelowDampCourse:
      return {K::LinesBack};
    case K::CavityFill:
      return {K::WallsBelowDampCourse};
    case K::FloorOverCellar:
      return {K::CellarWalls, K::WallsBelowDampCourse};
    case K::CellarBackfill:
      return {K::CellarMembrane, K::FloorOverCellar};
    case K::TrenchBackfill:
      return {K::CavityFill};
    case K::Oversite:
      return {K::TrenchBackfill, K::CellarBackfill};
    case K::GroundSlab:
      return {K::Oversite};
    case K::DampCourse:
      return {K::GroundSlab, K::FloorOverCellar};
    case K::ScaffoldRoof:
      return {K::UpperFloor, K::Lintels, K::RunIn, K::DampCourse};
    case K::WallPlate:
      return {K::ScaffoldRoof};
    case K::Gables:
      return {K::WallPlate};
    case K::Rafters:
      return {K::WallPlate, K::Gables};
    case K::Fascia:
      return {K::Rafters};
    case K::RoofCovering:
      return {K::Fascia};
    case K::WindowsAndDoors:
      return {K::RoofCovering};
    case K::Render:  // up to the frames, from the scaffold
      return {K::RoofCovering, K::WindowsAndDoors};
    case K::StrikeScaffold:
      return {K::RoofCovering, K::WindowsAndDoors, K::Render};
    case K::FloorFinish:
      return {K::WindowsAndDoors};
    case K::Stairs:  // out of the weather; one stands on the finished floor, or on the one below
      return {K::Stairs, K::FloorFinish, K::WindowsAndDoors, K::UpperFloor};
    case K::GardenFoundations:
      return {K::StrikeScaffold, K::Render};
    case K::GardenWalls:
      return {K::GardenFoundations};
    case K::OutsideWorks:
      return {K::StrikeScaffold, K::Render, K::GardenWalls};
    case K::Completion:
      return {K::FloorFinish, K::Stairs, K::OutsideWorks};
    case K::Own:  // where the job puts it
      return {};
    case K::ScaffoldLift:
    case K::RaiseCorners:
    case K::RunIn:
    case K::Lintels:
    case K::UpperFloor:  // one after another: each stands on the one before
      return {K::DampCourse};
  }
  return {};
}

bool raisesWalls(StageKind kind) {
  return kind >= StageKind::ScaffoldLift && kind <= StageKind::UpperFloor;
}

bool samePlace(const StageKey& a, const StageKey& b) {
  return a.kind == b.kind && a.storey == b.storey && a.lift == b.lift && a.kind != StageKind::Own;
}

class Network {
 public:
  explicit Network(const std::vector<StageKey>& stages) : stages_(stages) {}

  std::vector<size_t> predecessorsOf(size_t stage) const {
    // Parts of one stage do not wait for each other, and what waits for one waits for all.
    while (stage > 0 && samePlace(stages_[stage - 1], stages_[stage])) --stage;
    std::set<size_t> found;
    // The walls go up as one chain: a lift stands on the lift, or the scaffold, before it.
    if (raisesWalls(stages_[stage].kind) && stage > 0 && raisesWalls(stages_[stage - 1].kind)) {
      found.insert(stage - 1);
    } else {
      std::set<StageKind> asked;
      for (StageKind kind : before(stages_[stage].kind)) gather(kind, stage, asked, found);
    }
    for (size_t last : std::vector<size_t>(found.begin(), found.end())) {
      for (size_t i = last; i > 0 && samePlace(stages_[i - 1], stages_[i]); --i)
        found.insert(i - 1);
    }
    return {found.begin(), found.end()};
  }

 private:
  void gather(StageKind kind, size_t stage, std::set<StageKind>& asked,
              std::set<size_t>& found) const {
    if (!asked.insert(kind).second) return;
    // Of several with one kind (lifts) the last before this stage stands for all.
    for (size_t i = stage; i-- > 0;) {
      if (stages_[i].kind == kind) {
        found.insert(i);
        return;
      }
    }
    for (StageKind earlier : before(kind)) gather(earlier, stage, asked, found);
  }

  const std::vector<StageKey>& stages_;
};

}  // namespace

std::vector<std::vector<size_t>> stagePredecessors(const std::vector<StageKey>& stages) {
  const Network network(stages);
  std::vector<std::vector<size_t>> result;
  std::vector<std::set<size_t>> allBefore;  // everything that a stage waits for, however far back
  for (size_t i = 0; i < stages.size(); ++i) {
    const std::vector<size_t> direct = network.predecessorsOf(i);
    std::set<size_t> further;
    for (size_t p : direct) further.insert(allBefore[p].begin(), allBefore[p].end());
    // What another predecessor waits for already goes without saying.
    std::vector<size_t> needed;
    std::copy_if(direct.begin(), direct.end(), std::back_inserter(needed),
                 [&](size_t p) { return further.count(p) == 0; });
    further.insert(direct.begin(), direct.end());
    allBefore.push_back(std::move(further));
    result.push_back(std::move(needed));
  }
  return result;
}

}  // namespace model
