// What platforms a scaffold has, and what it is made of.
#pragma once

#include <string>
#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"
#include "model/works/element.h"
#include "model/works/scaffold_room.h"

namespace model {

// Scaffold sizes in metres: tube 48 mm, boards 225 x 38 mm (common practice, no source).
inline constexpr double kTube = 0.048;
inline constexpr double kBoardWidth = 0.225;
inline constexpr double kBoardThickness = 0.038;
inline constexpr double kBoardGap = 0.005;
inline constexpr int kBoards = 4;
inline constexpr double kGuardHeight = 0.950;   // of the upper rail above the boards
inline constexpr double kGuardGap = 0.475;      // from rail to rail
inline constexpr double kStandardOver = 0.150;  // of the outer standards above their highest rail
inline constexpr double kInnerOver = 0.150;     // of the inner ones: the wall is to be built there
// Nobody lays masonry higher than this above the boards that he stands on: a lift of 1.5 m, a
// course over, and the boards under its bed (common practice, no source).
inline constexpr double kMostReach = 1.750;

// A working platform, put up before the work that is done from it.
struct Platform {
  StageKey stage;
  std::string id;                 // "Ground floor/lift 2", "roof", "gable 1"
  std::string purpose;            // "lift 2", "the roof", "the gable, lift 1"
  Lift lift;                      // built from it; for the roof and gables the last one
  double level = 0;               // top of the boards
  double previous = 0;            // level of the platform below; the standards go on from it
  bool first = false;             // the standards start here
  bool boards = true;             // else only more rails over the platform below
  bool endsFree = false;          // goes round no corner: the platform beside it lies lower
  double insideFrom = 0.100;      // first inside board from the face; none when there is no room
  double guardTo = kGuardHeight;  // rails go up to at least here above `level`
};

// Distances outside the outer face of the two rows of standards.
struct ScaffoldRows {
  double inner = 0, outer = 0;
};

ScaffoldRows scaffoldRows(const Job& job);
// All round: one platform for each lift that starts more than 1.2 m above the lowest ground and
// either starts more than a metre above the platform before it or goes up out of reach of that.
// Then that of the roof, at the eaves, or more rails where the last one lies there already: they
// guard the edge of the covering.
std::vector<Platform> platforms(const Job& job, const SettingOut& settingOut);
// Platforms at one gable, from the one at `base` until its top is in reach.
std::vector<Platform> gablePlatforms(const Job& job, const SettingOut& settingOut, size_t wall,
                                     double base);
// Those of `all` that one wall's scaffold has, and at a gable those over them. None lies under
// `lowest`, near the ground.
std::vector<Platform> platformsOf(const Job& job, const SettingOut& settingOut,
                                  const std::vector<Platform>& all, size_t wall, double lowest);
// Whether the area is inside the boundary, outside the building and the standing buildings that
// stay, and clear of the other areas.
bool hasRoom(const Job& job, const SettingOut& settingOut, const Polygon& area,
             const std::vector<Polygon>& others);

// Ladders to a scaffold's platforms, from the ground to a metre over the boards; each goes when
// the next, longer one comes, the longest as `struck` says. `taken` holds the areas that are in use
// on plan; the ladders' is added. None where there is no room.
void addLadders(const Job& job, const SettingOut& settingOut, const ScaffoldLength& length,
                const std::string& place, const std::vector<Platform>& platforms,
                const Placement& struck, std::vector<Polygon>& taken, Works& works);

}  // namespace model
