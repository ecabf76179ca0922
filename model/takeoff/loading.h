// Loading out: how many bricks and blocks are to stand ready for each run of wall, lift by lift.
#pragma once

#include <string>
#include <vector>

#include "model/programme/programme.h"

namespace model {

// What one stretch between two corners takes in one lift, cut ones and waste included.
struct RunLoad {
  size_t wall = 0;
  int bricks = 0, blocks = 0;
  // Packs to set down there, in halves, upwards.
  double brickPacks = 0, blockPacks = 0;
};

// Walls below the damp course, one lift with its corners, or the gables.
struct LiftLoad {
  StageKey stage;       // of the run between the corners
  std::string name;     // "Ground floor, lift 1"
  double standing = 0;  // level that it is laid from: its underside
  std::vector<RunLoad> runs;
  int bricks = 0, blocks = 0;
  // Whole packs to bring for this lift: what the lifts before left over is used first.
  int brickPacks = 0, blockPacks = 0;
};

// In the programme's order.
std::vector<LiftLoad> deriveLoading(const Job& job, const SettingOut& settingOut,
                                    const Works& works, const Programme& programme);

// Said wherever loads are told. Never how much a scaffold bears: that is for its designer.
inline constexpr const char* kLoadingCaution =
    "Never overload a scaffold: only what its hand-over certificate allows, spread along the run "
    "and over the standards, and nothing on a loading bay that was not made as one; ask the "
    "scaffolder before packs go up";

}  // namespace model
