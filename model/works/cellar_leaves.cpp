#include "model/works/cellar_leaves.h"

#include <algorithm>
#include <cmath>

namespace model {

WallLayer CellarLeaves::layer(size_t wall, size_t leaf) const {
  return layerIn(ring.walls, wall, leaves[leaf].outer, leaves[leaf].inner);
}

LaidLeaf CellarLeaves::laid(const WallBuildUp& walls, size_t wall, size_t leaf) const {
  return layPlainLeaf(walls, leaves[leaf].bond, wall, layer(wall, leaf), foot, top);
}

CellarLeaves cellarLeaves(const Job& job, const SettingOut& settingOut) {
  CellarLeaves cellar;
  if (!job.cellar) return cellar;
  cellar.ring = cellarRing(settingOut);
  cellar.foot = settingOut.levels.cellarSlabTop;
  cellar.top = settingOut.levels.cellarWallTop;
  const auto leaf = [&](const char* name, double outer, double inner) {
    cellar.leaves.push_back(
        {name, outer, inner, blockBondRound(job.walls, cellar.ring, outer, inner)});
  };
  const double wall = job.cellar->wall;
  switch (job.cellar->kind) {
    case CellarWallKind::Concrete:
      break;
    case CellarWallKind::FilledCavity:
      leaf("outer leaf", 0, job.cellar->leaf);
      leaf("inner leaf", wall - job.cellar->leaf, wall);
      break;
    case CellarWallKind::HollowBlock:
      leaf("hollow blocks", 0, wall);
      break;
  }
  return cellar;
}

std::vector<CellarRise> cellarRises(const Job& job, const CellarLeaves& cellar) {
  const double course = job.walls.blockHeight + job.walls.joint;
  const double rise = course * std::max(1.0, std::floor(job.laying.dayRise / course + 1e-6));
  std::vector<CellarRise> rises;
  for (int i = 0; cellar.foot + i * rise < cellar.top - 1e-6; ++i)
    rises.push_back({cellar.foot + i * rise, std::min(cellar.foot + (i + 1) * rise, cellar.top)});
  return rises;
}

std::vector<CellarRise> cellarFillLifts(const Job& job, const CellarLeaves& cellar) {
  const int count =
      std::max(1, static_cast<int>(std::ceil(cellar.height() / job.laying.dayRise - 1e-6)));
  const auto level = [&](int i) {
    return i == count ? cellar.top : cellar.foot + cellar.height() * i / count;
  };
  std::vector<CellarRise> lifts;
  for (int i = 0; i < count; ++i) lifts.push_back({level(i), level(i + 1)});
  return lifts;
}

}  // namespace model
