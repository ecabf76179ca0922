// Every peg, stake and mark with its coordinates, for a total station.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/job/job.h"
#include "model/lines/boards.h"
#include "model/settingout/setting_out.h"

namespace model {

struct SetOutPeg {
  std::string name;  // unique: "A-OF", "A-B/A board outside end", "P1"
  std::string code;  // what it marks: "outer-face", "board", "offset-stake", "level-pin"
  Vec2 at{0, 0};     // of the drawing
  // In the site's grid; as the drawing has it where the job gives no grid.
  double east = 0, north = 0;
  // Above the job's datum: of face lines the concrete that they are marked on, of foundation edges
  // the formation, of the rest their own tops.
  double level = 0;
};

// Corners of every face line and of the cellar's walls, boards' ends, offset stakes, bench marks,
// level pins; in that order.
std::vector<SetOutPeg> derivePegs(const Job& job, const SettingOut& settingOut,
                                  const BoardPlan& boards);

// A point of the drawing in the site's grid: turned clockwise about the drawing's origin, then
// moved. Given as (east, north).
Vec2 inGrid(const std::optional<SiteGrid>& grid, const Vec2& p);

}  // namespace model
