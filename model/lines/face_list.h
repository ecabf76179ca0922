// Every line that is set out for one wall, from outside in.
#pragma once

#include <string>
#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"

namespace model {

struct SetOutFace {
  std::string key;   // stable, and as readings name it: "outer-face", "foundation-inner"
  std::string name;  // "outer face"
  std::string code;  // short, for the names of pegs: "OF"
  double inward = 0;
  // Where it meets the same line of the walls before and after; a cellar wall's ends where its own
  // outline does.
  Vec2 start{0, 0}, end{0, 0};
};

// The render's face only where there is render; the foundation's edges only where the wall has
// concrete of its own; the faces of a cellar wall where one stands under the wall.
std::vector<SetOutFace> facesOf(const Job& job, const SettingOut& settingOut, size_t wall);

// Degrees within which lines count as parallel, and corners as square.
inline constexpr double kParallel = 0.05;

}  // namespace model
