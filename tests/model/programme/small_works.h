// Works made by hand, so that the programme is tested without the rest of the model.
#pragma once

#include <string>
#include <vector>

#include "model/programme/programme.h"

namespace model {

inline Element cube(const std::string& id, const Placement& placed, double low = 0,
                    double high = 1) {
  Element e;
  e.id = e.name = id;
  e.kind = ElementKind::OuterLeaf;
  e.solid = box({0, 0, low}, {1, 1, high});
  e.placed = placed;
  return e;
}

inline Works worksIn(const std::vector<StageKey>& stages) {
  Works works;
  for (const StageKey& stage : stages) {
    add(works, cube("thing " + std::to_string(works.elements.size()), whole(stage)));
  }
  return works;
}

// Two storeys of two lifts each, heads at the end of the first lift.
inline SettingOut twoStoreys() {
  SettingOut out;
  out.corners = {{"A", {0, 0}, 1.57}, {"B", {4, 0}, 1.57}, {"C", {4, 3}, 1.57}};
  out.lifts = {{0, 1, 0, 1.35}, {0, 2, 1.35, 2.4}, {1, 1, 2.4, 3.75}, {1, 2, 3.75, 5.1}};
  out.levels.finishedFloor = {0, 2.7};
  out.levels.structuralFloor = {-0.175, 2.7};
  out.levels.joistBearing = {0, 2.458};
  out.levels.wallTop = 5.1;
  return out;
}

inline std::vector<std::string> idsOf(const Programme& programme) {
  std::vector<std::string> ids;
  for (const Stage& stage : programme.stages) ids.push_back(stage.id);
  return ids;
}

// What a job says otherwise of a stage.
template <typename Set>
StageOverride changed(const std::string& stage, const Set& set) {
  StageOverride change;
  change.stage = stage;
  set(change);
  return change;
}
inline StageOverride inDays(const std::string& stage, double days) {
  return changed(stage, [&](StageOverride& change) { change.days = days; });
}

}  // namespace model
