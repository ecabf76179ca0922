#include "model/walls/parapet_line.h"

#include <algorithm>
#include <cmath>

namespace model {

std::vector<Vec2> parapetLine(const Job& job, const SettingOut& settingOut, size_t wall) {
  const RoofEdge* parapet = parapetOn(job, settingOut, wall);
  const std::vector<SlopeEnd> slopes =
      parapet ? slopeEndsAt(settingOut, wall) : std::vector<SlopeEnd>{};
  if (slopes.empty()) return {};
  const WallLine& line = settingOut.walls[wall];
  const double inner = settingOut.faceDistances.innerFace;
  const double over = (job.roof.rafterDepth + job.roof.covering + parapet->parapet) *
                      std::sqrt(1 + settingOut.tanPitch * settingOut.tanPitch);
  const auto levelAt = [&](double s) {
    size_t i = 0;
    while (i + 1 < slopes.size() && slopes[i].to < s) ++i;
    return settingOut.rafterUnderside(slopes[i].face).at(line.at(s, inner)) + over;
  };
  const double foot = job.walls.total() + kKneelerPastWall, end = line.length - foot;
  std::vector<Vec2> top{{0, levelAt(foot)}, {foot, levelAt(foot)}};
  for (size_t i = 0; i + 1 < slopes.size(); ++i)
    if (slopes[i].to > foot + 1e-3 && slopes[i].to < end - 1e-3)
      top.push_back({slopes[i].to, levelAt(slopes[i].to)});
  top.push_back({end, levelAt(end)});
  top.push_back({line.length, levelAt(end)});
  return top;
}

double gableTop(const Job& job, const SettingOut& settingOut) {
  double top = settingOut.levels.ridge;
  for (size_t wall = 0; wall < settingOut.walls.size(); ++wall)
    for (const Vec2& p : parapetLine(job, settingOut, wall)) top = std::max(top, p.y);
  return top;
}

}  // namespace model
