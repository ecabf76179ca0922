// Where the timbers of the roof lie on plan: boards along hips, valleys and ridges, and what they
// leave of each slope for the rafters.
#pragma once

#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"

namespace model {

double cosPitch(const SettingOut& settingOut);
// The plane that the covering lies on.
Plane rafterTop(const Job& job, const SettingOut& settingOut, size_t face);

// The half of a board that lies on one slope: its edge on the roof line, from `a` to `b`, and its
// side within the slope, from `sideA` to `sideB`; cut on the mitre where it meets the next board.
struct HalfBoard {
  size_t line = 0;  // into Skeleton::lines
  size_t face = 0;  // into Skeleton::faces
  Vec2 a{0, 0}, b{0, 0}, sideA{0, 0}, sideB{0, 0};
};

struct RoofFrame {
  std::vector<HalfBoard> boards;
  std::vector<Polygon> clear;  // per face: what is left between the boards
};

// Boards as thick as the rafters are wide. A slope too small for them goes without, and its
// rafters run to the roof lines themselves.
RoofFrame deriveRoofFrame(const Job& job, const SettingOut& settingOut);

// The strips of a slope that its rafters cover, `width` wide, on the one grid of the whole roof (so
// that rafters pair at the ridge) and beside each verge. In order along the eaves.
std::vector<Polygon> rafterStrips(const Job& job, const SettingOut& settingOut, size_t face,
                                  const Polygon& clear);

}  // namespace model
