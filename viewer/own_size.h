// How large a thing is along its own axes, whichever way it stands on the site. No OpenGL.
#pragma once

#include <string>

#include "model/model.h"

namespace viewer {

// What the three measures of a thing are measured along.
enum class SizeAxes {
  Wall,     // length along its wall, thickness through it, height
  Opening,  // the same of a window or door
  Slope,    // along the eaves, up the slope, thickness square to it
  Bar,      // the two sides of its section, length
  Layer,    // the smallest rectangle on plan that holds it, thickness
  Plan      // the smallest rectangle on plan that holds it, height
};

struct OwnSize {
  SizeAxes axes = SizeAxes::Plan;
  double a = 0, b = 0, c = 0;  // metres, in the order given above
};

OwnSize ownSize(const model::SettingOut& settingOut, const model::Element& element);

// "Length 4311 x thickness 102.5 x height 1350 mm", "Section 50 x 150 mm, length 4300 mm".
std::string sizeWords(const OwnSize& size);

}  // namespace viewer
