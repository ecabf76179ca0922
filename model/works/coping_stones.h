// Stones of copings. All common practice, no source.
#pragma once

namespace model {

// Metres: the longest; how far they stand out at each side, so that the drip throws water clear;
// their joints.
inline constexpr double kCopingLength = 0.600, kCopingOut = 0.040, kCopingJoint = 0.010;

}  // namespace model
