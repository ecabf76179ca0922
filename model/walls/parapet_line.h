// The top of gables that go up past the roof.
#pragma once

#include <vector>

#include "model/settingout/gable_edges.h"

namespace model {

// How far a parapet stands level at each end, under its kneeler: so far past the outer face of the
// next wall, over the whole of that wall and this much more. Common practice, no source.
inline constexpr double kKneelerPastWall = 0.050;

// The line that a parapet's brickwork goes up to, from end to end, s and level; the same on both
// faces, which the roof's slopes are square to. Level at its ends, then along the slopes. Nothing
// for other walls.
std::vector<Vec2> parapetLine(const Job& job, const SettingOut& settingOut, size_t wall);

// The highest that any gable's brickwork or the roof goes.
double gableTop(const Job& job, const SettingOut& settingOut);

}  // namespace model
