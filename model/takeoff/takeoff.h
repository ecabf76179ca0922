// Quantities, from the same solids that are drawn.
#pragma once

#include <string>
#include <vector>

#include "model/programme/programme.h"

namespace model {

struct TakeoffRow {
  std::string item;   // "Facing bricks"
  double amount = 0;  // net, as drawn
  std::string unit;   // "no.", "m", "m2", "m3"
  double waste = 0;   // fraction added when ordering; 0 when none is usual
  double order = 0;   // amount * (1 + waste), rounded up the way it is sold
  std::string basis;  // "59.3 per m2 of 215 x 65 face with 10 joints"
  std::string stage;  // stage name, or empty for the whole job
};

struct Takeoff {
  std::vector<TakeoffRow> rows;     // whole job
  std::vector<TakeoffRow> byStage;  // the same split by stage
};

Takeoff deriveTakeoff(const Job& job, const SettingOut& settingOut, const Works& works,
                      const Programme& programme);

}  // namespace model
