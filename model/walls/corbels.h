// Courses of the outer leaf that stand out past the ones below, and where they turn a corner.
#pragma once

#include <array>
#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"

namespace model {

struct CorbelPlan {
  size_t corbel = 0;    // into Job::corbels
  int firstCourse = 0;  // over the damp course, from 0
  int courses = 1;
  double step = 0;           // metres
  double from = 0, to = 0;   // s: bricks that lie between these stand out
  double low = 0, high = 0;  // levels
  // At the wall's start and end: it goes round with the same courses of the next wall. `from` (or
  // `to`) is then far beyond.
  std::array<bool, 2> turns{};

  bool holds(int course) const { return course >= firstCourse && course < firstCourse + courses; }
  // How far a course stands out past the face of the wall.
  double out(int course) const { return (course - firstCourse + 1) * step; }
  double mostOut() const { return courses * step; }
};

// Those of a wall, in the job's order. Validation tells of what has no room.
std::vector<CorbelPlan> corbelsOn(const Job& job, const SettingOut& settingOut, size_t wall);

}  // namespace model
