#include "viewer/opening_pace.h"

#include <algorithm>
#include <cmath>

namespace viewer {
namespace {

constexpr double kShortest = 0.25, kLeastSeen = 0.8, kLongest = 3.2;  // seconds

// What the eye sees change: the sides of the box round it.
double sight(const model::Element& element) {
  const model::Bounds box = model::bounds(element.solid);
  if (box.empty()) return 0;
  const model::Vec3 size = box.high - box.low;
  return size.x * size.y + size.y * size.z + size.z * size.x;
}

}  // namespace

std::vector<double> openingPace(const model::Model& model) {
  std::vector<double> seen(model.programme.stages.size(), 0.0);
  const auto add = [&](const model::Placement& placement, double much) {
    if (placement.stage.kind == model::StageKind::Existing) return;
    if (const auto stage = model.programme.indexOf(placement.stage)) seen[*stage] += much;
  };
  for (const model::Element& element : model.works.elements) {
    add(element.placed, sight(element));
    if (element.removed) add(*element.removed, sight(element));
  }
  // A string is thin, but it is what its stage is about.
  for (const model::StringLine& line : model.works.strings) add(line.placed, 1e-6);
  const double most = seen.empty() ? 0 : *std::max_element(seen.begin(), seen.end());
  std::vector<double> seconds;
  for (const double much : seen)
    seconds.push_back(much <= 0 ? kShortest
                                : kLeastSeen + (kLongest - kLeastSeen) * std::sqrt(much / most));
  return seconds;
}

}  // namespace viewer
