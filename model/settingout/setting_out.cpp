#include "model/settingout/setting_out.h"

#include "model/settingout/derive.h"

namespace model {

namespace {

std::string turnedRound(const std::string& wall) {
  const size_t dash = wall.find('-');
  if (dash == std::string::npos) return wall;
  return wall.substr(dash + 1) + "-" + wall.substr(0, dash);
}

}  // namespace

std::optional<size_t> SettingOut::wallNamed(const std::string& name) const {
  const std::string other = turnedRound(name);
  for (size_t i = 0; i < walls.size(); ++i) {
    if (walls[i].name == name || walls[i].name == other) return i;
  }
  return std::nullopt;
}

std::optional<size_t> SettingOut::cornerNamed(const std::string& letter) const {
  for (size_t i = 0; i < corners.size(); ++i) {
    if (corners[i].letter == letter) return i;
  }
  return std::nullopt;
}

SettingOut deriveSettingOut(const Job& job) {
  SettingOut out;
  deriveOutline(job, out);
  deriveFaces(job, out);
  deriveOpenings(job, out);
  deriveRoof(job, out);
  deriveLevels(job, out);
  deriveRuns(job, out);
  deriveLifts(job, out);
  deriveStairs(job, out);
  deriveSchedule(job, out);
  return out;
}

}  // namespace model
