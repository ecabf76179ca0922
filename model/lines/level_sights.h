// Levels as they are read from one set-up of the instrument: the schedule's, or those of points.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/job/job.h"
#include "model/levelling/carry_level.h"
#include "model/levelling/set_up.h"
#include "model/settingout/setting_out.h"

namespace model {

struct LevelSight {
  Vec2 at{0, 0};         // where the staff would stand: the nearest such place to the instrument
  StaffReading reading;  // of the level to the millimetre
  CarryPlan carry;       // with steps when it cannot be read
  // What to do besides reading: "above the line: staff upside down ...", or why it cannot be read,
  // a change point and what is read in the end, and a set-up of the job that reads it. Empty when
  // the staff is read as usual.
  std::vector<std::string> words;
};

// One for each line of the schedule, in its order; empty without a mark. Open ground is as it was
// before the work, but for the cellar's dig, which is open down to the level that is wanted there,
// and for the floor that the instrument stands on.
std::vector<LevelSight> sightsOfLevels(const Job& job, const SettingOut& out, const SetUp& setUp);

// The same of any point of the job, to the millimetre; nothing without a mark. Where it lies under
// the ground inside the cellar's dig, that is open.
std::optional<LevelSight> sightOfPoint(const Job& job, const SettingOut& out, const SetUp& setUp,
                                       const Vec3& point);
// Of each of the points, in their order; empty without a mark.
std::vector<LevelSight> sightsOfPoints(const Job& job, const SettingOut& out, const SetUp& setUp,
                                       const std::vector<Vec3>& points);

}  // namespace model
