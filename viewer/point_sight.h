// How the point under the pointer is read from an instrument that cannot see it on the staff;
// remembered, so that a pointer that rests costs nothing.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"

namespace viewer {

class PointSight {
 public:
  // Where to take change points, up or down which tape, which other set-up reads it: a line each,
  // as the schedule of levels says it. None where the staff is read as usual.
  const std::vector<std::string>& words(const model::Job& job, const model::SettingOut& settingOut,
                                        const model::SetUp& setUp, const model::Vec3& point);
  // The job is another.
  void forget() { point_.reset(); }

 private:
  std::optional<model::Vec3> point_;  // to the millimetre
  model::SetUp setUp_;
  std::vector<std::string> words_;
};

}  // namespace viewer
