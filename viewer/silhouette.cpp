#include "viewer/silhouette.h"

namespace viewer {

std::vector<glm::vec3> silhouetteOf(const model::SettingOut& out, const model::Vec3& origin) {
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
  return points;
}

}  // namespace viewer
