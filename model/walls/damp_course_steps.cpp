#include "model/walls/damp_course_steps.h"

#include "model/walls/leaf_plan.h"

namespace model {

std::vector<Rect> DampStepPlan::strips() const {
  const double half = kDampCourseThickness / 2;
  return {{from - half, level, to + half, level + kDampCourseThickness},
          {from - half, foot, from + half, level},
          {to - half, foot, to + half, level}};
}

std::vector<Rect> DampStepPlan::joints(double joint) const {
  return {{from - joint / 2, foot, from + joint / 2, level},
          {to - joint / 2, foot, to + joint / 2, level}};
}

std::vector<DampStepPlan> dampStepsIn(const Job& job, const SettingOut& settingOut, size_t wall) {
  const WallLine& line = settingOut.walls[wall];
  std::vector<DampStepPlan> steps;
  for (size_t i = 0; i < job.dampCourseSteps.size(); ++i) {
    const DampCourseStep& drawn = job.dampCourseSteps[i];
    if (settingOut.wallNamed(drawn.wall) != wall) continue;
    const bool fromStart = settingOut.corners[line.from].letter == drawn.from;
    DampStepPlan step;
    step.step = i;
    step.from = fromStart ? drawn.at : line.length - drawn.to;
    step.to = fromStart ? drawn.to : line.length - drawn.at;
    step.foot = settingOut.levels.dampCourse;
    step.level = step.foot + drawn.courses * job.walls.course();
    steps.push_back(step);
  }
  return steps;
}

}  // namespace model
