// What the checks find that the stages speak of too.
#pragma once

#include <string>
#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"

namespace model {

// What is dug beside a standing building and goes down below what its foundations seem to need.
struct DigBeside {
  size_t building = 0;             // into Site::buildings
  bool cellar = false;             // the cellar's dig does
  std::vector<std::string> walls;  // whose trenches do; the longest beside it first
  double formation = 0, away = 0;  // of the worst: its level and its distance from the building
  double bottom = 0;               // of the building's foundations, as far as known
};
std::vector<DigBeside> digsBesideBuildings(const Job& job, const SettingOut& settingOut);

// Trenches so deep that common practice (no source) leaves their support to an engineer.
struct DeepTrenches {
  double most = 0;                 // metres under the highest ground over them
  double formation = 0;            // there
  std::vector<std::string> walls;  // deepest first
};
DeepTrenches deepTrenches(const SettingOut& settingOut);

// A door, or another opening that people walk through, well above the ground outside.
struct OverDrop {
  size_t opening = 0;  // into SettingOut::openings
  double drop = 0;     // metres from its threshold to the lowest ground in front of it
};
std::vector<OverDrop> openingsOverDrops(const Job& job, const SettingOut& settingOut);

// The standing building that an opening looks straight at from nearer than a metre.
struct Facing {
  size_t opening = 0;   // into SettingOut::openings
  size_t building = 0;  // into Site::buildings
  double away = 0;      // metres
};
std::vector<Facing> openingsFacingBuildings(const Job& job, const SettingOut& settingOut);

}  // namespace model
