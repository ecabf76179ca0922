// How the heights that matter come out in courses of the outer leaf.
#pragma once

#include <string>
#include <vector>

#include "model/settingout/setting_out.h"

namespace model {

// Beds may be this thick where a height is shared among them: common practice, no source; inside
// the 5 mm that one joint may be off the mean of eight (warranty technical manual V7, chapter 1).
inline constexpr double kLeastBed = 0.008, kMostBed = 0.012;

// Courses are gauged from the damp course, up and down, so one end of every height is there. All in
// metres.
struct CourseHeight {
  std::string what;   // "sill"
  std::string where;  // openings or walls; may be empty
  double level = 0;   // the other end
  double height = 0;  // from the damp course, or down to it; over 0
  int courses = 0;    // the nearest whole number
  double over = 0;    // that the height is more (+) than those
  // What every bed between would have to be; 0 where there is no course.
  double bed = 0;
  bool bedWithin = false;
  // Where it does not come out with the beds as drawn: the course that is cut, as gauge rods number
  // them, and what is left of its units. 0 where all are whole; with a number and no height left,
  // the bed alone makes it up.
  int cutCourse = 0;
  double cutTo = 0;
};

// Top of concrete (all that differ), sills, heads, joist bearings, the plate's bed: lowest first,
// and of equal ones each once with all that have it.
std::vector<CourseHeight> courseHeights(const Job& job, const SettingOut& out);

// "whole courses", "course 15 cut to 48", "the bed over course 14 makes up 12".
std::string comesOutText(const CourseHeight& height);

}  // namespace model
