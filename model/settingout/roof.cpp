// The roof's plan and the planes over it.
#include <algorithm>
#include <limits>

#include <glm/geometric.hpp>

#include "model/settingout/derive.h"
#include "model/settingout/gable_edges.h"

namespace model {

void deriveRoof(const Job& job, SettingOut& out) {
  std::vector<double> inward;
  std::vector<bool> gable;
  for (size_t wall = 0; wall < out.walls.size(); ++wall) {
    gable.push_back(out.walls[wall].eaves == EavesKind::Gable);
    inward.push_back(parapetOn(job, out, wall) ? out.faceDistances.innerFace
                     : gable.back()            ? -job.roof.verge
                                               : -job.roof.eaves);
  }
  out.eavesOutline = offsetMitred(out.outline, inward);
  if (const auto result = roofSkeleton(out.eavesOutline, gable); result.skeleton) {
    out.roof = *result.skeleton;
  }
}

Plane SettingOut::rafterUnderside(size_t face) const {
  const WallLine& wall = walls[roof.faces[face].edge];
  const Vec2 slope = wall.outward * -tanPitch;
  return {slope, levels.eavesUnderside - glm::dot(slope, wall.start)};
}

double SettingOut::rafterUndersideAt(const Vec2& p) const {
  double level = std::numeric_limits<double>::max();
  for (size_t face = 0; face < roof.faces.size(); ++face) {
    if (contains(roof.faces[face].plan, p, 1e-6)) {
      level = std::min(level, rafterUnderside(face).at(p));
    }
  }
  if (level < std::numeric_limits<double>::max()) return level;
  // Outside every face: the nearest one, carried on.
  double nearest = std::numeric_limits<double>::max();
  level = levels.eavesUnderside;
  for (size_t face = 0; face < roof.faces.size(); ++face) {
    const double distance = distanceToOutline(roof.faces[face].plan, p);
    if (distance >= nearest) continue;
    nearest = distance;
    level = rafterUnderside(face).at(p);
  }
  return level;
}

}  // namespace model
