#include "model/settingout/gable_edges.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

namespace model {

const RoofEdge* parapetOn(const Job& job, const SettingOut& settingOut, size_t wall) {
  for (const RoofEdge& edge : job.roof.edges)
    if (edge.kind == EavesKind::Gable && edge.parapet > 0 &&
        settingOut.wallNamed(edge.wall) == wall)
      return &edge;
  return nullptr;
}

std::vector<SlopeEnd> slopeEndsAt(const SettingOut& settingOut, size_t wall) {
  const WallLine& line = settingOut.walls[wall];
  const Vec2 from = settingOut.eavesOutline[line.from], to = settingOut.eavesOutline[line.to];
  const auto s = [&](const Vec2& p) { return glm::dot(p - line.start, line.along); };
  const std::vector<RoofFace>& faces = settingOut.roof.faces;
  std::vector<SlopeEnd> ends;
  for (const RoofLine& verge : settingOut.roof.lines) {
    const double middle = s((verge.a + verge.b) / 2.0);
    const bool here =
        verge.kind == RoofLineKind::Verge && std::abs(cross(line.along, verge.a - from)) < 1e-6 &&
        std::abs(cross(line.along, verge.b - from)) < 1e-6 && middle > s(from) && middle < s(to);
    if (!here) continue;
    SlopeEnd end{s(verge.a), s(verge.b), verge.a, verge.b};
    if (end.from > end.to) {
      std::swap(end.from, end.to);
      std::swap(end.a, end.b);
    }
    end.face = static_cast<size_t>(
        std::find_if(faces.begin(), faces.end(),
                     [&](const RoofFace& face) { return face.edge == verge.faceA; }) -
        faces.begin());
    ends.push_back(end);
  }
  std::sort(ends.begin(), ends.end(),
            [](const SlopeEnd& a, const SlopeEnd& b) { return a.from < b.from; });
  return ends;
}

}  // namespace model
