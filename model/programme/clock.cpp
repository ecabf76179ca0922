// The programme's clock: when each point of each thing is there.
#include <algorithm>

#include "model/programme/programme.h"

namespace model {
namespace {

// A stage's own work keeps clear of its two ends, so that at a whole number exactly the finished
// stages stand and nothing of the next has begun.
constexpr double kLead = 0.02;
constexpr double kWork = 0.96;

double timeOf(const Programme& programme, const StageKey& stage, double fraction) {
  if (stage.kind == StageKind::Existing) return -1;
  const auto index = programme.indexOf(stage);
  if (!index) return kNever;
  double within = fraction;
  for (const StageShare& share : programme.stages[*index].shares) {
    if (share.key == stage) within = share.from + (share.to - share.from) * fraction;
  }
  return static_cast<double>(*index) + kLead + kWork * within;
}

bool growing(const Placement& placement) { return placement.direction != Vec3(0, 0, 0); }

double lastMoment(const Programme& programme, const Placement& placement) {
  const double last =
      growing(placement) ? std::max(placement.begin, placement.end) : placement.begin;
  return timeOf(programme, placement.stage, last);
}

}  // namespace

double timeAt(const Programme& programme, const Placement& placement, const Vec3& p) {
  if (placement.stage.kind == StageKind::Existing) return -1;
  return timeOf(programme, placement.stage, fractionAt(placement, p));
}

std::vector<size_t> standingAt(const Programme& programme, const Works& works, double t) {
  std::vector<size_t> standing;
  for (size_t i = 0; i < works.elements.size(); ++i) {
    const Element& element = works.elements[i];
    const bool begun = timeOf(programme, element.placed.stage, element.placed.begin) <= t;
    const bool gone = element.removed && lastMoment(programme, *element.removed) <= t;
    if (begun && !gone) standing.push_back(i);
  }
  return standing;
}

}  // namespace model
