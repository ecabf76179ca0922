// Where scaffold is needed and where there is room for it.
#pragma once

#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"
#include "model/works/element.h"

namespace model {

// Scaffold sizes in metres: tube 48 mm, boards 225 x 38 mm (common practice, no source).
inline constexpr double kTube = 0.048;
inline constexpr double kBoardWidth = 0.225;
inline constexpr double kBoardThickness = 0.038;
inline constexpr double kBoardGap = 0.005;
inline constexpr int kBoards = 4;
inline constexpr double kGuardHeight = 0.950;   // of the upper rail above the boards
inline constexpr double kStandardOver = 1.100;  // of the outer standards above the boards
inline constexpr double kInnerOver = 0.150;     // of the inner ones: the wall is to be built there

// A working platform all round, put up before a lift is built from it.
struct Platform {
  Lift lift;
  double level = 0;           // top of the boards
  double previous = 0;        // level of the platform below; the standards go on from it
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
// The plan of a wall's scaffold and the room just outside it, mitred at the corners.
Polygon scaffoldBand(const SettingOut& settingOut, size_t wall, const ScaffoldRows& rows);
// Whether the area is inside the boundary, outside the building and the standing buildings that
// stay, and clear of the other areas.
bool hasRoom(const Job& job, const SettingOut& settingOut, const Polygon& area,
             const std::vector<Polygon>& others);
// Per wall: whether its scaffold has room.
std::vector<bool> wallsWithRoom(const Job& job, const SettingOut& settingOut,
                                const ScaffoldRows& rows);

// Ladders to one wall's platforms, from the ground to a metre over the boards; each goes when the
// next, longer one comes. `taken` holds the areas that are in use on plan; the ladders' is added.
// None where there is no room.
void addLadders(const Job& job, const SettingOut& settingOut, size_t wall, const ScaffoldRows& rows,
                const std::vector<Platform>& platforms, std::vector<Polygon>& taken, Works& works);

}  // namespace model
