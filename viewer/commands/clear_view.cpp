#include "viewer/commands/clear_view.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

namespace viewer {
namespace {

using model::Vec2;

Vec2 middleOf(const model::Outline& outline) {
  Vec2 sum{0, 0};
  for (const Vec2& p : outline) sum += p;
  return outline.empty() ? sum : sum / static_cast<double>(outline.size());
}

// How much of the standing buildings is on the side of the eye.
double inTheWay(const model::Model& model, const Vec2& towardsEye) {
  constexpr double kBeside = 0.5;  // cosine of 60 degrees off the line of sight
  const Vec2 middle = middleOf(model.job.outline);
  double total = 0;
  for (const model::StandingBuilding& building : model.job.site.buildings) {
    if (building.kind == model::BuildingKind::Demolish) continue;
    const Vec2 away = middleOf(building.outline) - middle;
    const double distance = glm::length(away);
    if (distance < 1e-6) continue;
    total += building.height * std::max(0.0, glm::dot(away / distance, towardsEye) - kBeside);
  }
  return total;
}

}  // namespace

std::string clearView(const model::Model& model) {
  const double half = std::sqrt(0.5);
  struct Corner {
    const char* name;
    Vec2 towardsEye;
  };
  const Corner corners[] = {{"south-west", {-half, -half}},
                            {"south-east", {half, -half}},
                            {"north-east", {half, half}},
                            {"north-west", {-half, half}}};
  const Corner* best = corners;
  for (const Corner& corner : corners) {
    if (inTheWay(model, corner.towardsEye) < inTheWay(model, best->towardsEye) - 1e-9) {
      best = &corner;
    }
  }
  return best->name;
}

}  // namespace viewer
