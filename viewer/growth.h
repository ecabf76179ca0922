// When a point of an element is there, as the shaders and the picker read it.
#pragma once

#include <algorithm>

#include <glm/geometric.hpp>
#include <glm/vec3.hpp>

#include "model/programme/programme.h"

namespace viewer {

// One model::Placement on the programme's clock, in local coordinates: at point p the time is
//   from + (to - from) * clamp((dot(direction, p) - low) / (high - low), 0, 1).
// A zero direction means one time, `from`, for the whole element.
struct Growth {
  glm::vec3 direction{0};
  float low = 0, high = 1;
  float from = -1, to = -1;

  bool operator==(const Growth&) const = default;
  bool moves() const { return from < to && direction != glm::vec3(0); }
  float at(const glm::vec3& p) const {
    if (!moves()) return from;
    return from +
           (to - from) * std::clamp((glm::dot(direction, p) - low) / (high - low), 0.0f, 1.0f);
  }
  // The height along `direction` that the front has reached; only between `from` and `to`.
  float frontAt(double time) const;
};

// Equal to model::timeAt at every point, of which it makes two calls and no more.
Growth growthOf(const model::Programme& programme, const model::Placement& placement,
                const model::Vec3& origin);
// Of a thing that is never taken away.
Growth never();

}  // namespace viewer
