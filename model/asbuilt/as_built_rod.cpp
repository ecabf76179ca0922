#include "model/asbuilt/as_built_rod.h"

#include <algorithm>
#include <cmath>

namespace model {

namespace {

constexpr double kSame = 0.0005;

CourseKind kindOf(const WallBuildUp& walls, const RodCourse& course) {
  if (course.unit < walls.brickHeight - kSame) return CourseKind::Cut;
  return std::abs(course.bed - walls.joint) < kSame ? CourseKind::Whole : CourseKind::OddBed;
}

const FirstBed* bedAt(const AsBuilt& built, size_t corner) {
  for (const FirstBed& bed : built.beds) {
    if (built.deviations[bed.deviation].place.corner == corner) return &bed;
  }
  return nullptr;
}

}  // namespace

std::vector<RodCourse> asBuiltCourses(const Job& job, const SettingOut& settingOut,
                                      const FirstBed& bed) {
  const WallBuildUp& walls = job.walls;
  std::vector<RodCourse> courses;
  if (bed.answer == BedAnswer::BreakOut) return courses;
  const bool oneBed = bed.answer == BedAnswer::Normal || bed.answer == BedAnswer::Thin;
  const bool share = !oneBed && bed.regauge.within;
  double level = settingOut.levels.dampCourse - bed.height;
  const auto lay = [&](double joint, double unit) {
    RodCourse course;
    course.bottom = level;
    course.bed = joint;
    course.unit = unit;
    course.kind = kindOf(walls, course);
    level = course.top();
    courses.push_back(course);
  };
  if (share) {
    for (int i = 0; i < bed.courses; ++i)
      lay(i < bed.regauge.courses ? bed.regauge.joint : walls.joint, walls.brickHeight);
  } else {
    if (bed.unit > 0) lay(walls.joint, bed.unit);
    for (int i = 0; i < bed.wholeCourses; ++i)
      lay(courses.empty() ? bed.bedThen : walls.joint, walls.brickHeight);
  }
  int number = -static_cast<int>(courses.size());
  for (RodCourse& course : courses) course.number = number++;
  return courses;
}

std::vector<GaugeRod> deriveAsBuiltRods(const Job& job, const SettingOut& settingOut,
                                        const AsBuilt& built) {
  std::vector<GaugeRod> rods;
  for (GaugeRod& rod : deriveGaugeRods(job, settingOut)) {
    const FirstBed* bed = bedAt(built, rod.corner);
    if (!bed) continue;
    std::vector<RodCourse> courses = asBuiltCourses(job, settingOut, *bed);
    if (courses.empty()) continue;
    for (const RodCourse& course : rod.courses) {
      if (course.number > 0) courses.push_back(course);
    }
    rod.courses = std::move(courses);
    const Deviation& d = built.deviations[bed->deviation];
    rod.foot = d.read;
    for (GaugeMark& mark : rod.marks) {
      if (std::abs(mark.level - d.design) < kSame) mark.level = d.read;
    }
    // A lower wall's concrete beside it is not this rod's any more.
    std::erase_if(rod.marks, [&](const GaugeMark& mark) { return mark.level < rod.foot - kSame; });
    std::stable_sort(rod.marks.begin(), rod.marks.end(),
                     [](const GaugeMark& a, const GaugeMark& b) { return a.level < b.level; });
    rods.push_back(std::move(rod));
  }
  return rods;
}

}  // namespace model
