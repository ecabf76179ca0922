// The notch in every rafter that sits on the wall plate.
#pragma once

#include <algorithm>
#include <cmath>

#include "model/job/job.h"

namespace model {

// The notch's level cut, metres on plan, inward from the plate's outer edge: as wide as the plate,
// but no deeper than a quarter of the rafter. The plumb cut at its outer end is as high as the roof
// rises over it. (Common practice, no source: at most a third of the depth.)
inline double birdsmouthSeat(const Roof& roof) {
  constexpr double kDeepest = 0.25;
  const double sine = std::sin(roof.pitch * 3.14159265358979323846 / 180);
  if (sine <= 0) return roof.plateWidth;
  return std::min(roof.plateWidth, kDeepest * roof.rafterDepth / sine);
}

}  // namespace model
