// What the roof does at gables: which slopes end there, and which gables go up past them.
#pragma once

#include <vector>

#include "model/settingout/setting_out.h"

namespace model {

// A gable's parapet as the drawing has it; nothing where the roof goes over the wall to its verge,
// and at hips.
const RoofEdge* parapetOn(const Job& job, const SettingOut& settingOut, size_t wall);

// The length of a gable at which one slope ends, on the eaves outline: a.s < b.s.
struct SlopeEnd {
  double from = 0, to = 0;  // s
  Vec2 a{0, 0}, b{0, 0};
  size_t face = 0;  // into Skeleton::faces
};
// In order along the wall.
std::vector<SlopeEnd> slopeEndsAt(const SettingOut& settingOut, size_t wall);

}  // namespace model
