// Views that a job keeps for its stages, as the window and pictures show them.
#pragma once

#include "model/model.h"
#include "viewer/stage_view.h"

namespace viewer {

StageView shownView(const model::KeptView& kept, const model::Model& model, const Scene& scene);

// What the job file is to keep of what is seen now; the stage is left empty.
model::KeptView keptView(const Camera& camera, const Section& section, SeeThrough seeThrough,
                         const Scene& scene);

}  // namespace viewer
