// Walls one after another round an outline, apart from what openings, roofs and levels make of
// them: of the building, or of its cellar.
#pragma once

#include <string>
#include <vector>

#include "model/settingout/setting_out.h"

namespace model {

struct WallRing {
  std::vector<Corner> corners;
  std::vector<WallLine> walls;  // wall i starts at corner i
};

// `outline` is anticlockwise, `letters` name its corners; walls are named by both of theirs.
WallRing wallRing(const Polygon& outline, const std::vector<std::string>& letters);

// The cellar's own walls, along their outer face: corners K1, K2 ... as their pegs are called.
WallRing cellarRing(const SettingOut& settingOut);

}  // namespace model
