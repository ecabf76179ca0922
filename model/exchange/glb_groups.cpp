#include "model/exchange/glb_groups.h"

#include <cmath>
#include <map>
#include <utility>

namespace model {

namespace {

// The stage of a placement, through the same clock that the viewer plays by.
int stageOf(const Programme& programme, const Placement& placement) {
  const double time = timeAt(programme, placement, {0, 0, 0});
  if (time < 0) return kBeforeWork;
  if (time >= kNever) return kStays;
  return int(std::floor(time));
}

template <typename Thing>
std::pair<int, int> lifeOf(const Programme& programme, const Thing& thing) {
  return {stageOf(programme, thing.placed),
          thing.removed ? stageOf(programme, *thing.removed) : kStays};
}

}  // namespace

std::vector<GlbGroup> groupWorks(const Programme& programme, const Works& works) {
  std::map<std::pair<int, int>, GlbGroup> groups;
  const auto groupFor = [&groups](std::pair<int, int> life) -> GlbGroup& {
    GlbGroup& group = groups[life];
    group.placed = life.first;
    group.removed = life.second;
    return group;
  };
  for (size_t i = 0; i < works.elements.size(); ++i) {
    groupFor(lifeOf(programme, works.elements[i])).elements.push_back(i);
  }
  for (size_t i = 0; i < works.strings.size(); ++i) {
    groupFor(lifeOf(programme, works.strings[i])).strings.push_back(i);
  }
  std::vector<GlbGroup> sorted;
  for (auto& [life, group] : groups) sorted.push_back(std::move(group));
  return sorted;
}

std::vector<GlbKey> keysOf(const GlbGroup& group, const GlbClock& clock) {
  constexpr double kHold = 1.0 / 1024;
  const bool there = group.placed == kBeforeWork;
  if (there && group.staysToTheEnd()) return {};
  std::vector<GlbKey> keys{{0, there ? 1.0 : 0.0}};
  const auto switchAt = [&keys](double seconds) {
    const double before = keys.back().scale;
    keys.push_back({seconds - kHold, before});
    keys.push_back({seconds, 1 - before});
  };
  const bool seen = group.removed > group.placed && group.placed != kStays;
  if (!there && seen) switchAt(clock.startOf(group.placed));
  if (seen && !group.staysToTheEnd()) switchAt(clock.startOf(group.removed));
  keys.push_back({clock.end(), keys.back().scale});
  return keys;
}

std::string nameOf(const GlbGroup& group, const Programme& programme) {
  const auto known = [&programme](int stage) {
    return stage >= 0 && size_t(stage) < programme.stages.size();
  };
  std::string name = group.placed == kBeforeWork ? "Before work starts" : "Not placed";
  if (known(group.placed)) {
    name = "Stage " + std::to_string(group.placed + 1) + " - " +
           programme.stages[size_t(group.placed)].name;
  }
  if (known(group.removed)) name += " (until stage " + std::to_string(group.removed + 1) + ")";
  return name;
}

}  // namespace model
