// The gauge (storey) rod of a corner: every course from the top of foundation to the plate's bed,
// and what happens on the way up. Courses count from the damp course, the datum of all rods, so
// that they are level round the building whatever a corner's own concrete; what is left over comes
// at the foot, or under the plate.
#pragma once

#include <array>
#include <string>
#include <vector>

#include "model/settingout/setting_out.h"

namespace model {

enum class CourseKind {
  Whole,
  OddBed,   // a whole unit on a thicker or thinner bed
  Cut,      // units cut lower
  BedOnly,  // mortar or concrete: no course goes in
};

// One course of the outer leaf: the bed joint and the unit on it. Metres.
struct RodCourse {
  // From the damp course: 1 is the first over it, -1 the first under it.
  int number = 1;
  double bottom = 0;  // level under its bed
  double bed = 0;
  double unit = 0;  // height of brick
  CourseKind kind = CourseKind::Whole;

  double top() const { return bottom + bed + unit; }
};

// A level that is marked on the rod; one of the schedule of levels, with what has it at this
// corner.
struct GaugeMark {
  std::string key;    // of the schedule
  std::string name;   // as there
  std::string where;  // "Hall window (A-B)"; may be empty
  double level = 0;
};

struct GaugeRod {
  size_t corner = 0;
  std::array<size_t, 2> walls{};  // that meet there: the one that ends and the one that starts
  double foot = 0;  // top of concrete or of cellar wall; the lower when the walls' differ
  double dampCourse = 0;
  double top = 0;                  // bed of the plate
  std::vector<RodCourse> courses;  // lowest first; together they reach from foot to top
  std::vector<GaugeMark> marks;    // lowest first
};

// A rod for every corner, in their order.
std::vector<GaugeRod> deriveGaugeRods(const Job& job, const SettingOut& out);

// "course -14 cut: bricks 40 high", "course -13 on a bed of 18"; empty for a whole course.
std::string oddCourseText(const RodCourse& course);

// "14", "-3", "30 over course 14": where a level lies among the courses, to the millimetre.
std::string coursePlaceText(const GaugeRod& rod, double level);

// "up 1050", "down 975", "0": millimetres from the damp course.
std::string fromDampCourseText(const GaugeRod& rod, double level);

// How the courses come out, in a sentence: "13 courses from top of concrete -0.975 to the damp
// course, all whole; 34 from there to the plate bed at +2.550, all whole".
std::string rodSummary(const GaugeRod& rod);

}  // namespace model
