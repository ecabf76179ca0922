// Where the dimension lines of a plan run: each length of wall and each offset has one, clear of
// the others as far as there is room. Pure arithmetic, no drawing.
#pragma once

#include <string>
#include <vector>

#include "model/settingout/offsets.h"
#include "model/settingout/setting_out.h"

namespace viewer {

// What is nearer than this touches, and is no distance that anybody could set out, metres.
inline constexpr double kTouching = 0.005;

// On plan, metres.
struct PlanDimension {
  model::Vec2 from{0, 0}, to{0, 0};  // the ends of the dimension line
  model::Vec2 outward{0, 0};         // unit, away from the wall; square to the line
  double length = 0;                 // what it says
  bool offset = false;               // to a boundary or a building, else along a wall
  // Of a wall, whose corners these are; its line stands off by `off`.
  model::Vec2 start{0, 0}, end{0, 0};
  double off = 0;
};

struct PlanRoom {
  double metre = 40;                            // pixels to one
  std::vector<model::Vec2> places;              // of corner letters, which lines keep clear of
  double placeRadius = 0.4;                     // metres
  model::Vec2 low{-1e9, -1e9}, high{1e9, 1e9};  // what is in sight
};

// Every wall of the outline, in its order, then every offset that is more than nothing. `offsets`
// are deriveOffsets() of the job.
std::vector<PlanDimension> planDimensions(const model::Job& job, const model::SettingOut& out,
                                          const std::vector<model::SiteOffset>& offsets,
                                          const PlanRoom& room);

// How far an offset's line may be moved along the two sides that it stands on, still square to
// them and as long: back (negative or 0) and forth, metres to the left of its direction.
struct Slide {
  double back = 0, forth = 0;
};
Slide slideOf(const model::SiteOffset& offset, const model::Polygon& from,
              const model::Polygon& to);

}  // namespace viewer
