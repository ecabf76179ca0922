#include "viewer/day_beats.h"

#include <algorithm>
#include <cmath>

#include "viewer/panels/dates_layout.h"
#include "viewer/playback.h"

namespace viewer {

namespace {

constexpr double kWait = 0.4;       // seconds
constexpr double kLeastBeat = 0.1;  // seconds: of a stage that takes no time to speak of

}  // namespace

Beats dayBeats(const model::Programme& programme) {
  Beats beats;
  double begin = 0;
  for (size_t i = 0; i < programme.stages.size(); ++i) {
    const model::Stage& stage = programme.stages[i];
    for (const double end : dayEnds(stage, i)) {
      const double days = (end - begin) * (stage.to - stage.from);
      beats.add(end, std::max(kLeastBeat, days / Playback::kDaysPerSecond));
      begin = end;
    }
    if (stage.waitDays > 0) beats.add(double(i + 1), kWait);
  }
  return beats;
}

}  // namespace viewer
