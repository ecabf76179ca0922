// Whether clay brickwork has room to move.
#include <algorithm>

#include "model/checks/parts.h"
#include "model/job/value_words.h"
#include "model/walls/movement_joints.h"

namespace model {
namespace {

// Joints of clay brickwork at most 12 m apart and the first within 6 m of a corner: new-build
// snagging guide "Good brickwork", after the NHBC guide. Source: SNAG-BRICK.
constexpr double kApart = 12;
constexpr double kFromCorner = 6;

}  // namespace

// One line for all of them. A wall without joints may be as long as what lies between two.
void checkMovementJoints(const Checking& check) {
  std::vector<std::string> found;
  for (size_t wall = 0; wall < check.settingOut.walls.size(); ++wall) {
    const WallLine& line = check.settingOut.walls[wall];
    double from = 0, longest = 0;
    const auto joints = movementJointsIn(check.job, check.settingOut, wall);
    for (const MovementGap& joint : joints) {
      const double middle = (joint.from + joint.to) / 2;
      longest = std::max(longest, (middle - from) * (from == 0 ? kApart / kFromCorner : 1));
      from = middle;
    }
    const double last = line.length - from;
    longest = std::max(longest, last * (joints.empty() ? 1 : kApart / kFromCorner));
    if (longest > kApart + 1e-6)
      found.push_back("wall " + line.name + " (" + lengthWords(line.length) + ", " +
                      (joints.empty() ? "none" : std::to_string(joints.size())) + ")");
  }
  if (found.empty()) return;
  check.warning("walls", "few movement joints for clay bricks: " + listedApart(found),
                "at most 12000 mm apart and within 6000 mm of a corner is usual for clay (NHBC "
                "guide); other units need more; the designer says where they are");
}

}  // namespace model
