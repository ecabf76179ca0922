// What a picture of a stage needs laid over it.
#pragma once

#include "model/works/element.h"
#include "viewer/picture.h"

namespace viewer {

// Words, title block, tape and levels, which keep the building at one place from picture to
// picture; strings, corner letters and dimensions as well for stages that set out by them.
Overlays overlaysOf(const model::StageKey& stage);

}  // namespace viewer
