#include "viewer/silhouette.h"

#include <cmath>

#include "model/walls/parapet_line.h"

namespace viewer {

std::vector<glm::vec3> silhouetteOf(const model::Model& model, const model::Vec3& origin) {
  const model::SettingOut& out = model.settingOut;
  constexpr double kRound = 1.9;  // metres: scaffold, boards, dimension lines and corner letters
  std::vector<glm::vec3> points;
  if (out.roof.faces.empty()) return points;
  const auto put = [&](const model::Vec2& p, double level) {
    points.push_back(glm::vec3(model::Vec3(p, level) - origin));
  };
  for (const model::Vec2& p : out.ring(-kRound)) put(p, out.levels.groundLow);
  for (const model::Vec2& p : out.eavesOutline) put(p, out.levels.eaves);
  for (const model::RoofLine& line : out.roof.lines) {
    put(line.a, out.levels.eaves + line.runA * out.tanPitch);
    put(line.b, out.levels.eaves + line.runB * out.tanPitch);
  }
  for (size_t wall = 0; wall < out.walls.size(); ++wall) {
    const model::RoofEdge* parapet = model::parapetOn(model.job, out, wall);
    if (!parapet) continue;
    const double coping = parapet->coping * std::sqrt(1 + out.tanPitch * out.tanPitch);
    for (const model::Vec2& p : model::parapetLine(model.job, out, wall))
      put(out.walls[wall].at(p.x, 0), p.y + coping);
  }
  return points;
}

}  // namespace viewer
