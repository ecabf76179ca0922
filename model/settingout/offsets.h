// How far the new walls, with any render, stand from the boundary and from buildings that stay.
#pragma once

#include <string>
#include <vector>

#include "model/settingout/setting_out.h"

namespace model {

struct SiteOffset {
  std::string to;       // "boundary 2" (its sides count from its first corner), a building's name
  Vec2 from{0, 0};      // on the outermost finished face: the masonry's, or its render's
  Vec2 at{0, 0};        // the nearest point of the other
  double distance = 0;  // metres, >= 0; 0 when they touch or cross
};

// The shortest line between two outlines, `from` on `a`. Neither may be empty.
SiteOffset shortestBetween(const Polygon& a, const Polygon& b);

// To each side of the boundary, when the job gives one, and to each building that is not to be
// taken down; in that order.
std::vector<SiteOffset> deriveOffsets(const Job& job, const SettingOut& settingOut);

}  // namespace model
