#include "model/lines/stands_on.h"

#include <algorithm>

namespace model {

namespace {

// The index of the storey; as many as there are for none.
size_t storeyOf(const Job& job, const SetUp& setUp) {
  const auto named = [&](const Storey& storey) { return storey.name == setUp.floor; };
  return static_cast<size_t>(std::find_if(job.storeys.begin(), job.storeys.end(), named) -
                             job.storeys.begin());
}

bool onCellarFloor(const Job& job, const SetUp& setUp) {
  return job.cellar && setUp.floor == kCellarFloor && storeyOf(job, setUp) == job.storeys.size();
}

}  // namespace

std::optional<double> floorOf(const Job& job, const SettingOut& settingOut, const SetUp& setUp) {
  if (setUp.floor.empty()) return std::nullopt;
  if (onCellarFloor(job, setUp)) return settingOut.levels.cellarSlabTop;
  const size_t storey = storeyOf(job, setUp);
  if (storey == job.storeys.size()) return std::nullopt;
  return settingOut.levels.structuralFloor[storey];
}

Polygon floorArea(const Job& job, const SettingOut& settingOut, const SetUp& setUp) {
  if (onCellarFloor(job, setUp)) return offsetMitred(settingOut.cellarOutline, job.cellar->wall);
  return settingOut.ring(settingOut.faceDistances.innerFace);
}

double standsOn(const Job& job, const SettingOut& settingOut, const SetUp& setUp) {
  const auto floor = floorOf(job, settingOut, setUp);
  return floor ? *floor : settingOut.terrain.levelAt(setUp.at);
}

}  // namespace model
