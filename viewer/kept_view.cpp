#include "viewer/kept_view.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <glm/geometric.hpp>

#include "viewer/section.h"

namespace viewer {
namespace {

using model::CutAway;
using model::Vec3;

// A camera that looks straight down has no direction on plan but north: others are kept by tilting
// it by what nobody sees.
constexpr double kStraightDown = std::numbers::pi / 2, kNearlyDown = kStraightDown - 0.002;

void turnToTarget(Camera& camera, const Vec3& eye, const Vec3& target) {
  const Vec3 way = target - eye;
  const double across = std::hypot(way.x, way.y);
  camera.distance = glm::length(way);
  camera.elevation = std::clamp(std::atan2(-way.z, across), 0.0, kStraightDown);
  camera.azimuth = across < 1e-4 ? 0 : std::atan2(way.x, way.y);
}

Section cutOf(const model::KeptView& kept, const model::Model& model, const Scene& scene) {
  const auto upright = [&](Across across, int remove) {
    return sectionAt(scene, across, kept.cutAt ? *kept.cutAt : tellingCut(model, across), remove);
  };
  switch (kept.cutAway) {
    case CutAway::West:
      return upright(Across::X, -1);
    case CutAway::East:
      return upright(Across::X, 1);
    case CutAway::South:
      return upright(Across::Y, -1);
    case CutAway::North:
      return upright(Across::Y, 1);
    case CutAway::Above:
      return levelSection(kept.cutLevel.value_or(0));
    case CutAway::Nothing:
      break;
  }
  return {};
}

}  // namespace

StageView shownView(const model::KeptView& kept, const model::Model& model, const Scene& scene) {
  StageView view;
  view.kept = true;
  const Vec3 eye(kept.eye, kept.eyeLevel), target(kept.target, kept.targetLevel);
  turnToTarget(view.camera, eye, target);
  view.camera.target = scene.local(target);
  view.camera.parallel = kept.projection == model::ViewProjection::Parallel;
  view.section = cutOf(kept, model, scene);
  view.seeThrough = SeeThrough(int(kept.seeThrough));  // the same three
  return view;
}

model::KeptView keptView(const Camera& camera, const Section& section, SeeThrough seeThrough,
                         const Scene& scene) {
  model::KeptView kept;
  Camera from = camera;
  if (std::abs(std::remainder(from.azimuth, 2 * std::numbers::pi)) > 1e-3)
    from.elevation = std::min(from.elevation, kNearlyDown);
  const Vec3 eye = scene.world(from.eye()), target = scene.world(from.target);
  kept.eye = {eye.x, eye.y};
  kept.eyeLevel = eye.z;
  kept.target = {target.x, target.y};
  kept.targetLevel = target.z;
  if (camera.parallel) kept.projection = model::ViewProjection::Parallel;
  kept.seeThrough = model::SeeThrough(int(seeThrough));
  if (!section.on) return kept;
  const glm::vec3 normal{section.plane};
  const Vec3 on = scene.world(normal * (-section.plane.w / glm::dot(normal, normal)));
  if (std::abs(normal.z) > 0.5f) {
    kept.cutAway = CutAway::Above;
    kept.cutLevel = on.z;
  } else if (std::abs(normal.x) > std::abs(normal.y)) {
    kept.cutAway = normal.x > 0 ? CutAway::East : CutAway::West;
    kept.cutAt = on.x;
  } else {
    kept.cutAway = normal.y > 0 ? CutAway::North : CutAway::South;
    kept.cutAt = on.y;
  }
  return kept;
}

}  // namespace viewer
