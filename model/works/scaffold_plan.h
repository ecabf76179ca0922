// Where scaffold is needed and where there is room for it.
#pragma once

#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"

namespace model {

// Scaffold sizes in metres: tube 48 mm, boards 225 x 38 mm (common practice, no source).
inline constexpr double kTube = 0.048;
inline constexpr double kBoardWidth = 0.225;
inline constexpr double kBoardThickness = 0.038;
inline constexpr double kBoardGap = 0.005;
inline constexpr int kBoards = 4;
inline constexpr double kGuardHeight = 0.950;   // of the upper rail above the boards
inline constexpr double kStandardOver = 1.100;  // of the standards above the boards

// A working platform all round, put up before a lift is built from it.
struct Platform {
  Lift lift;
  double level = 0;           // top of the boards
  double previous = 0;        // top of the standards that stand already; feet are on the ground
  bool first = false;         // the standards start here
  bool insideBoards = false;  // there is room under the eaves
};

// Distances outside the outer face of the two rows of standards.
struct ScaffoldRows {
  double inner = 0, outer = 0;
};

ScaffoldRows scaffoldRows(const Job& job);
// One platform for each lift that starts more than 1.2 m above the lowest ground and more than a
// reach above the platform before it.
std::vector<Platform> platforms(const Job& job, const SettingOut& settingOut);
// Per wall: whether a scaffold fits between it, the other walls' scaffolds, the standing buildings
// and the boundary.
std::vector<bool> wallsWithRoom(const Job& job, const SettingOut& settingOut,
                                const ScaffoldRows& rows);

}  // namespace model
