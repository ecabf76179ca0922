#include "model/programme/stage_order.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace model {
namespace {

constexpr double kTolerance = 0.001;
constexpr int kAfterAllLifts = 1000000;

bool raisesWalls(StageKind kind) {
  return kind >= StageKind::ScaffoldLift && kind <= StageKind::UpperFloor;
}

std::set<StageKey> stagesUsed(const Works& works) {
  std::set<StageKey> used;
  const auto note = [&](const auto& thing) {
    used.insert(thing.placed.stage);
    if (thing.removed) used.insert(thing.removed->stage);
  };
  for (const Element& element : works.elements) note(element);
  for (const StringLine& line : works.strings) note(line);
  // These leave nothing behind that is drawn, and are never left out on a site.
  for (StageKind kind : {StageKind::SiteSetUp, StageKind::SettingOut, StageKind::OutsideWorks,
                         StageKind::Completion}) {
    used.insert(StageKey{kind});
  }
  if (used.count(StageKey{StageKind::FoundationPour})) used.insert(StageKey{StageKind::LinesBack});
  used.erase(StageKey{StageKind::Existing});
  return used;
}

// The lift after which a storey's lintels go on: the first that reaches their bearing.
int liftUnderLintels(const SettingOut& settingOut, const Works& works, int storey) {
  double bearing = 1e300;
  for (const Element& e : works.elements) {
    if (e.placed.stage == StageKey{StageKind::Lintels, storey}) {
      bearing = std::min(bearing, e.underside);
    }
  }
  int last = 0;
  for (const Lift& lift : settingOut.lifts) {
    if (lift.storey != storey) continue;
    last = lift.number;
    if (lift.top >= bearing - kTolerance) break;
  }
  return last;
}

// What stages sort by: the phase, then for the walls storey, lift and the order inside a lift.
using Rank = std::tuple<int, int, int, int>;

Rank rankOf(const StageKey& key, const SettingOut& settingOut, const Works& works) {
  const int kind = static_cast<int>(key.kind);
  if (!raisesWalls(key.kind)) return {kind, key.storey, key.lift, 0};
  const int phase = static_cast<int>(StageKind::ScaffoldLift);
  switch (key.kind) {
    case StageKind::Lintels:
      return {phase, key.storey, liftUnderLintels(settingOut, works, key.storey), kind};
    case StageKind::UpperFloor:  // lies on the storey below
      return {phase, key.storey - 1, kAfterAllLifts, kind};
    default:
      return {phase, key.storey, key.lift, kind};
  }
}

}  // namespace

std::vector<StageKey> stageOrder(const SettingOut& settingOut, const Works& works) {
  std::vector<std::pair<Rank, StageKey>> ranked;
  for (const StageKey& key : stagesUsed(works)) {
    ranked.emplace_back(rankOf(key, settingOut, works), key);
  }
  std::sort(ranked.begin(), ranked.end());
  std::vector<StageKey> order;
  for (const auto& [rank, key] : ranked) order.push_back(key);
  return order;
}

}  // namespace model
