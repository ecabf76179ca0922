// Where the profile boards of every wall line can stand, and what keeps a line for which they
// cannot.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"
#include "model/works/plan_shapes.h"

namespace model {

inline constexpr double kRailDepth = 0.150;

// One end of a wall's lines: a board square to them, on two stakes.
struct LineEnd {
  double s = 0;   // along the wall from its start: where the strings end
  Polygon board;  // everything the end takes up on plan
  std::array<Polygon, 2> stakes;
  Polygon rail;
};

// A string beside the wall and parallel to it, between two stakes, from which every face is
// measured across.
struct OffsetLine {
  double out = 0;             // of the string from the outer face; negative: on the inside
  std::array<double, 2> s{};  // of the stakes, along the wall from its start
  std::array<Polygon, 2> stakes;
};

struct LineEnds {
  // Nothing where no board can stand, or where an offset line does for both. One alone stands
  // opposite something that can carry the other ends of its lines, such as a neighbour's wall.
  std::optional<LineEnd> atStart, atEnd;
  bool noRoomAtStart = false, noRoomAtEnd = false;  // no board can stand there
  std::optional<OffsetLine> offset;                 // where that is so and there is room for one
};

// By wall. Boards stand clear of the dig by what the job asks for where the site allows, else as
// far out as it does; never off the site, in a standing building or in one another. Offset lines
// are at a whole 100 mm from the outer face, their stakes placed by the same rules.
std::vector<LineEnds> placeProfiles(const Job& job, const SettingOut& settingOut);

// The first thing that a wall's lines come to beyond one of its ends.
struct InTheWay {
  std::string what;  // "the boundary", a building's name
  double away = 0;   // from the corner, along the line
};

// Nothing within `reach`.
std::optional<InTheWay> inTheWay(const Job& job, const SettingOut& settingOut, const WallLine& wall,
                                 bool atEnd, double reach);

}  // namespace model
