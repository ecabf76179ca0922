// Along which lengths of the walls there is room for a scaffold, and where there is none.
//
// For model/checks: one warning for each gap of scaffoldRoom() says all that is needed; there are
// none where no scaffold is needed.
#pragma once

#include <string>
#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"
#include "model/walls/wall_layer.h"

namespace model {

// A scaffold along a wall from s = `from` to `to`. At a corner where there is room it goes round on
// the mitre; elsewhere it ends square.
struct ScaffoldLength {
  size_t wall = 0;
  double from = 0, to = 0;
  bool roundStart = true, roundEnd = true;
};

// A length of wall without scaffold.
struct ScaffoldGap {
  size_t wall = 0;
  double from = 0, to = 0;  // s
  double room = 0;          // metres from the face to what is in the way, at the narrowest
  double needed = 0;        // metres from the face that a scaffold takes
  std::string beside;       // what is in the way: "the boundary", a building's name, "wall C-D"
};

struct ScaffoldRoom {
  std::vector<ScaffoldLength> lengths;  // in order of walls, then along them
  std::vector<ScaffoldGap> gaps;        // the same; none shorter than 600 mm
};

// Empty when no wall is high enough for a scaffold.
ScaffoldRoom scaffoldRoom(const Job& job, const SettingOut& settingOut);

// A length of wall that no scaffold reaches, whatever the reason: a gap, or what is left beside one
// is too short for a scaffold.
struct BareSide {
  size_t wall = 0;
  double from = 0, to = 0;  // s
};

// In order of walls, then along them; none shorter than 600 mm. Empty when no wall is high enough
// for a scaffold.
std::vector<BareSide> bareSides(const Job& job, const SettingOut& settingOut);

// The part of a scaffold between two distances outside the face.
WallLayer scaffoldLayer(const SettingOut& settingOut, const ScaffoldLength& length, double near,
                        double far);
// The plan of a scaffold and the room just outside it.
Polygon scaffoldBand(const Job& job, const SettingOut& settingOut, const ScaffoldLength& length);

}  // namespace model
