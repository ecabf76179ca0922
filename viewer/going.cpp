#include "viewer/going.h"

#include <algorithm>
#include <cmath>

namespace viewer {

namespace {

constexpr float kGoing = 0.2f;    // of a stage
constexpr float kBegun = 0.002f;  // of a stage, so that before it nothing has gone

}  // namespace

Growth goingOf(const model::Programme& programme, const model::Element& element,
               const model::Vec3& origin, const glm::vec3& low, const glm::vec3& high) {
  if (!element.removed) return never();
  Growth growth = growthOf(programme, *element.removed, origin);
  const glm::vec3 size = high - low;
  const float moment = growth.from;
  const bool known = moment > 0 && moment < static_cast<float>(model::kNever);
  if (growth.direction != glm::vec3(0) || growth.from != growth.to || !known) return growth;
  const int longer = size.x >= size.y ? 0 : 1;
  const int axis = size.z >= size[longer] ? 2 : longer;
  if (size[axis] <= 0) return growth;
  const bool down = axis == 2;
  growth.direction = glm::vec3(0);
  growth.direction[axis] = down ? -1.0f : 1.0f;
  growth.low = down ? -high.z : low[axis];
  growth.high = down ? -low.z : high[axis];
  // At a whole number the stage before is at its end.
  growth.from = std::min(moment, std::max(moment - kGoing, std::ceil(moment) - 1 + kBegun));
  return growth;
}

}  // namespace viewer
