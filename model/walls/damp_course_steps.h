// Where the outer leaf's damp course is stepped up, and what it takes of the leaf there.
#pragma once

#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"
#include "model/walls/elevation.h"

namespace model {

struct DampStepPlan {
  size_t step = 0;          // into Job::dampCourseSteps
  double from = 0, to = 0;  // s
  double foot = 0;          // level of the damp course
  double level = 0;         // underside of the strip that is stepped up: the bed of a course

  // The strip in its bed and one up each end, in the leaf's elevation: together one U upside down.
  std::vector<Rect> strips() const;
  // Straight joints up the ends, as wide as `joint`: bricks end at them.
  std::vector<Rect> joints(double joint) const;
};

// Those of a wall, in the job's order.
std::vector<DampStepPlan> dampStepsIn(const Job& job, const SettingOut& settingOut, size_t wall);

}  // namespace model
