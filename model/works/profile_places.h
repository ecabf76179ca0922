// Where the profile boards of every wall line can stand.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"
#include "model/works/plan_shapes.h"

namespace model {

inline constexpr double kRailDepth = 0.150;

// One end of a wall's lines: a board square to them, or a peg where there is no room for one.
struct LineEnd {
  double s = 0;  // along the wall from its start: where the strings end
  bool peg = false;
  Polygon board;  // everything the end takes up on plan; the peg itself when it is one
  std::array<Polygon, 2> stakes;
  Polygon rail;
};

struct LineEnds {
  std::optional<LineEnd> atStart, atEnd;  // nothing where not even a peg can stand
};

// By wall. Boards stand clear of the dig by 1.2 m where the site allows, else as far out as it
// does; never off the site, in a standing building or in one another.
std::vector<LineEnds> placeProfiles(const Job& job, const SettingOut& settingOut);

}  // namespace model
