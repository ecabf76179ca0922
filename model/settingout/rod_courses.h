// How a height is divided into courses. Private to this folder, apart from tests.
#pragma once

#include <vector>

#include "model/settingout/gauge_rod.h"

namespace model {

// Courses from `foot` to `top`, lowest first, whole ones next to the damp course. What is left over
// at an end goes into one bed of 5 to 25 mm if it can; else units are cut, none lower than 25 mm
// (common practice, no source), two courses of them rather than one that is lower.
std::vector<RodCourse> rodCourses(const WallBuildUp& walls, double foot, double dampCourse,
                                  double top);

}  // namespace model
