#include "model/walls/movement_joints.h"

#include <algorithm>

namespace model {

std::vector<MovementGap> movementJointsIn(const Job& job, const SettingOut& settingOut,
                                          size_t wall) {
  const WallLine& line = settingOut.walls[wall];
  std::vector<MovementGap> gaps;
  for (size_t i = 0; i < job.movementJoints.size(); ++i) {
    const MovementJoint& joint = job.movementJoints[i];
    if (settingOut.wallNamed(joint.wall) != wall) continue;
    const bool fromStart = settingOut.corners[line.from].letter == joint.from;
    const double at = fromStart ? joint.at : line.length - joint.at;
    gaps.push_back({i, at - joint.width / 2, at + joint.width / 2});
  }
  std::sort(gaps.begin(), gaps.end(),
            [](const MovementGap& a, const MovementGap& b) { return a.from < b.from; });
  return gaps;
}

}  // namespace model
