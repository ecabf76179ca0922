// The programme played by the day.
#pragma once

#include "model/programme/programme.h"
#include "viewer/beats.h"

namespace viewer {

// Every working day takes 1 / Playback::kDaysPerSecond, part of a day its part; a wait after a
// stage is a short rest, however many days it has. A beat ends with each working day and each
// stage.
Beats dayBeats(const model::Programme& programme);

}  // namespace viewer
