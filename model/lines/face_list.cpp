#include "model/lines/face_list.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>
#include <glm/trigonometric.hpp>

namespace model {

namespace {

// The cellar's wall under this one, when it is parallel and at least partly under it.
void addCellarFaces(const Job& job, const SettingOut& out, const WallLine& wall,
                    std::vector<SetOutFace>& faces) {
  if (!job.cellar) return;
  const Polygon& outer = out.cellarOutline;
  const Polygon inner = offsetMitred(outer, job.cellar->wall);
  const double reach = out.faceDistances.innermost();
  for (size_t i = 0; i < outer.size(); ++i) {
    const Vec2 a = outer[i], b = outer[(i + 1) % outer.size()];
    const Vec2 along = glm::normalize(b - a);
    const double turn = std::asin(std::clamp(cross(wall.along, along), -1.0, 1.0));
    if (glm::dot(wall.along, along) < 0 || std::abs(glm::degrees(turn)) > kParallel) continue;
    const double inward = -glm::dot(a - wall.start, wall.outward);
    const double from = glm::dot(a - wall.start, wall.along);
    const double to = glm::dot(b - wall.start, wall.along);
    if (inward < -reach || inward > reach || from > wall.length - 1e-6 || to < 1e-6) continue;
    faces.push_back({"cellar-wall-outer", "cellar wall, outer face", "CO", inward, a, b});
    faces.push_back({"cellar-wall-inner", "cellar wall, inner face", "CI",
                     inward + job.cellar->wall, inner[i], inner[(i + 1) % inner.size()]});
    return;
  }
}

}  // namespace

std::vector<SetOutFace> facesOf(const Job& job, const SettingOut& settingOut, size_t wall) {
  const WallFaces& lines = settingOut.faces[wall];
  std::vector<SetOutFace> faces;
  const auto add = [&](const char* key, const char* code, const FaceLine& line) {
    faces.push_back({key, line.name, code, line.inward, line.start, line.end});
  };
  if (job.walls.render > 0) {
    const double inward = settingOut.faceDistances.finishedFace;
    const Polygon ring = settingOut.ring(inward);
    const WallLine& of = settingOut.walls[wall];
    faces.push_back({"render-face", "face of render", "RF", inward, ring[of.from], ring[of.to]});
  }
  add("outer-face", "OF", lines.outerFace);
  add("outer-leaf-back", "OB", lines.outerLeafBack);
  add("inner-leaf-front", "IB", lines.innerLeafFront);
  add("inner-face", "IF", lines.innerFace);
  const bool ownConcrete =
      std::any_of(settingOut.foundations.begin(), settingOut.foundations.end(),
                  [&](const FoundationRun& run) { return run.wall == wall && !run.onCellar; });
  if (ownConcrete) {
    add("foundation-outer", "FO", lines.foundationOuter);
    add("foundation-inner", "FI", lines.foundationInner);
  }
  addCellarFaces(job, settingOut, settingOut.walls[wall], faces);
  std::stable_sort(faces.begin(), faces.end(), [](const SetOutFace& a, const SetOutFace& b) {
    return a.inward < b.inward - 1e-9;
  });
  return faces;
}

}  // namespace model
