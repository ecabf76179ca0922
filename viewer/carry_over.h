// What the user has picked out stays picked out when the job file is read again.
#pragma once

#include "viewer/job_loader.h"
#include "viewer/view_state.h"

namespace viewer {

// The selected thing stays selected while there is one of its id; a measurement stays while the
// things that it was taken on are there and still reach its points. The eye, the section and the
// points stay where they are on the drawing.
void carryOver(ViewState& state, const ReadyJob& before, const ReadyJob& after);

}  // namespace viewer
