#include "viewer/growth.h"

namespace viewer {

float Growth::frontAt(double time) const {
  return low + (high - low) * static_cast<float>((time - from) / (to - from));
}

Growth growthOf(const model::Programme& programme, const model::Placement& placement,
                const model::Vec3& origin) {
  Growth growth;
  const model::Vec3& d = placement.direction;
  const double square = glm::dot(d, d);
  if (square == 0 || placement.high <= placement.low) {
    growth.from = growth.to = static_cast<float>(model::timeAt(programme, placement, {0, 0, 0}));
    return growth;
  }
  const double shift = glm::dot(d, origin);
  growth.direction = glm::vec3(d);
  growth.low = static_cast<float>(placement.low - shift);
  growth.high = static_cast<float>(placement.high - shift);
  growth.from =
      static_cast<float>(model::timeAt(programme, placement, d * (placement.low / square)));
  growth.to =
      static_cast<float>(model::timeAt(programme, placement, d * (placement.high / square)));
  return growth;
}

Growth never() {
  Growth growth;
  growth.from = growth.to = static_cast<float>(model::kNever);
  return growth;
}

}  // namespace viewer
