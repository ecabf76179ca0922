// The words of gauge_rod.h.
#include <cmath>

#include "model/level_text.h"
#include "model/settingout/gauge_rod.h"

namespace model {

namespace {

constexpr double kSame = 5e-4;

// The courses on one side of the damp course, in words.
std::string sideText(const GaugeRod& rod, int side) {
  int count = 0;
  std::string odd;
  for (const RodCourse& course : rod.courses) {
    if ((course.number > 0) != (side > 0)) continue;
    if (course.kind != CourseKind::BedOnly) ++count;
    const std::string text = oddCourseText(course);
    if (!text.empty()) odd += (odd.empty() ? "" : ", ") + text;
  }
  return std::to_string(count) + (count == 1 ? " course" : " courses") + "|" +
         (odd.empty() ? (count == 0   ? ""
                         : count == 1 ? ", whole"
                                      : ", all whole")
                      : ": " + odd);
}

std::string between(const std::string& counted, const std::string& what) {
  const size_t bar = counted.find('|');
  return counted.substr(0, bar) + what + counted.substr(bar + 1);
}

}  // namespace

std::string oddCourseText(const RodCourse& course) {
  const std::string name = "course " + std::to_string(course.number);
  switch (course.kind) {
    case CourseKind::Whole:
      return {};
    case CourseKind::OddBed:
      return name + " on a bed of " + lengthText(course.bed);
    case CourseKind::Cut:
      return name + " cut: bricks " + lengthText(course.unit) + " high";
    case CourseKind::BedOnly:
      return "a bed of " + lengthText(course.bed) + " only, too low for a course";
  }
  return {};
}

std::string coursePlaceText(const GaugeRod& rod, double level) {
  if (std::fabs(level - rod.dampCourse) < kSame) return "0";
  for (const RodCourse& course : rod.courses) {
    // The far side of a course from the damp course has its number.
    const double line = course.number > 0 ? course.top() : course.bottom;
    if (std::fabs(level - line) < kSame) return std::to_string(course.number);
  }
  for (const RodCourse& course : rod.courses) {
    if (level < course.bottom || level > course.top()) continue;
    const int under = course.number > 0 ? course.number - 1 : course.number;
    return lengthText(level - course.bottom) + " over " +
           (under == 0 ? "the damp course" : "course " + std::to_string(under));
  }
  return {};
}

std::string fromDampCourseText(const GaugeRod& rod, double level) {
  const std::string length = lengthText(std::fabs(level - rod.dampCourse));
  if (length == "0") return length;
  return (level > rod.dampCourse ? "up " : "down ") + length;
}

std::string rodSummary(const GaugeRod& rod) {
  return between(sideText(rod, -1),
                 " from the foot at " + levelText(rod.foot) + " to the damp course") +
         "; " + between(sideText(rod, 1), " from there to the plate bed at " + levelText(rod.top));
}

}  // namespace model
