// When courses are laid: the moments that are jumped to, and the line that each course is laid to.
#pragma once

#include <optional>
#include <vector>

#include "model/programme/programme.h"

namespace model {

// Courses as people and gauge rods number them: 1 is the first over the damp course, -1 the first
// under it.
int courseNumber(const MasonryUnit& unit);

// The moment on the programme's clock at which the unit lies in its place; `placed` is its
// element's.
double timeOfUnit(const Programme& programme, const Placement& placed, const MasonryUnit& unit);

// The line pulled for one course of one leaf while it is run in, along its top, a hair off the face
// that is kept fair: the outer leaf's outside, the inner leaf's inside. From end to end of what
// lies in the course, so over openings too, as the line is.
struct CourseLine {
  size_t frame = 0;  // into Works::frames: which leaf
  int number = 0;
  Vec3 a{0, 0, 0}, b{0, 0, 0};
  double from = 0, to = 0;  // moments between which it is pulled
};

// By `from`. None for corners, which are raised by level, gauge and plumb.
std::vector<CourseLine> courseLines(const Works& works, const Programme& programme);

// One course of the outer leaves in one stage: all corners, or all runs between them.
struct CourseStep {
  size_t stage = 0;
  int number = 0;
  double top = 0;           // level
  double from = 0, to = 0;  // begun; its last brick laid
};

// In the order in which they end.
std::vector<CourseStep> courseSteps(const Works& works, const Programme& programme);
// The one under way at a time, the last to begin; null when none is.
const CourseStep* courseAt(const std::vector<CourseStep>& steps, double time);
// The end of the next course after a time, or of the one before it; nothing when there is none.
std::optional<double> nextCourseEnd(const std::vector<CourseStep>& steps, double time);
std::optional<double> courseEndBefore(const std::vector<CourseStep>& steps, double time);

// When the outer leaf's brick in a course at a corner is laid, that of both walls where both have
// one; nothing where no brick is in that course there.
std::optional<double> timeOfCourse(const SettingOut& settingOut, const Works& works,
                                   const Programme& programme, size_t corner, int number);

}  // namespace model
