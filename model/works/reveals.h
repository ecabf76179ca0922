// What stands in the reveals of openings: where frames are set, what render returns to.
#pragma once

#include "model/settingout/setting_out.h"

namespace model {

// Common practice, no source:
inline constexpr double kReveal = 0.030;     // from the outer face to the frame
inline constexpr double kFrameFace = 0.060;  // a frame's member, seen from the front
inline constexpr double kSillHeight = 0.040;

// False for a plain opening, and for one too small for a frame.
bool hasFrame(const BuiltOpening& opening);

}  // namespace model
