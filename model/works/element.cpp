#include "model/works/element.h"

#include <algorithm>
#include <utility>

#include <glm/geometric.hpp>

namespace model {

namespace {

// A height range that is never empty, so that the placement formula never divides by zero.
Placement along(StageKey stage, Vec3 direction, double low, double high, double begin, double end) {
  return Placement{stage, begin, end, direction, low, std::max(high, low + 1e-9)};
}

}  // namespace

Placement whole(StageKey stage, double begin) {
  Placement placement;
  placement.stage = stage;
  placement.begin = begin;
  placement.end = begin;
  return placement;
}

Placement upward(StageKey stage, double from, double to, double begin, double end) {
  return along(stage, {0, 0, 1}, from, to, begin, end);
}

Placement downward(StageKey stage, double from, double to, double begin, double end) {
  return along(stage, {0, 0, -1}, -from, -to, begin, end);
}

double fractionAt(const Placement& placement, const Vec3& p) {
  if (placement.direction == Vec3{0, 0, 0}) return std::clamp(placement.begin, 0.0, 1.0);
  const double way =
      (glm::dot(placement.direction, p) - placement.low) / (placement.high - placement.low);
  const double fraction =
      placement.begin + (placement.end - placement.begin) * std::clamp(way, 0.0, 1.0);
  return std::clamp(fraction, 0.0, 1.0);
}

void add(Works& works, Element element) {
  if (element.solid.empty()) return;
  const Bounds b = bounds(element.solid);
  element.underside = b.low.z;
  element.top = b.high.z;
  works.elements.push_back(std::move(element));
}

}  // namespace model
