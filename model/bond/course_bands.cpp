#include "model/bond/course_bands.h"

#include <algorithm>

namespace model {
namespace {

constexpr double kHair = 1e-6;

double lowestConcreteOf(const SettingOut& settingOut, size_t wall) {
  double low = settingOut.levels.dampCourse;
  for (const FoundationRun& run : settingOut.foundations)
    if (run.wall == wall) low = std::min(low, run.top);
  return low;
}

// From `bottom` up to `top`; the last one may be less than a course.
void upTo(std::vector<CourseBand>& bands, double bottom, double top, double course, int& number) {
  const double from = bottom;
  for (int i = 1; bottom < top - kHair; ++i) {
    const double next = std::min(from + i * course, top);
    bands.push_back({bottom, top - next < kHair ? top : next, number++});
    bottom = bands.back().top;
  }
}

}  // namespace

std::vector<CourseBand> courseBands(const Job& job, const SettingOut& settingOut,
                                    const LeafPlan& plan, double top) {
  const WallBuildUp& walls = job.walls;
  const bool brick = plan.side == LeafSide::Outer;
  const double course = brick ? walls.course() : walls.blockHeight + walls.joint;
  const double datum = settingOut.levels.dampCourse;
  std::vector<CourseBand> bands;
  const double foot = lowestConcreteOf(settingOut, plan.wall);
  const double under = datum - kDampCourseThickness;
  int number = -1;
  for (double at = under; at > foot + kHair; --number) {
    const double next = std::max(under + number * course, foot);
    bands.push_back({next - foot < kHair ? foot : next, at, number});
    at = bands.back().bottom;
  }
  std::reverse(bands.begin(), bands.end());
  number = 0;
  double at = datum;
  if (!brick) {
    // At a gable too, though it is built level only to where its slope begins: the courses must
    // meet those of the next wall.
    for (const Lift& lift : settingOut.lifts) {
      const double stop = std::min(lift.top, top);
      if (stop < at + kHair) continue;
      upTo(bands, at, stop, course, number);
      at = stop;
    }
  }
  upTo(bands, at, top, course, number);
  return bands;
}

}  // namespace model
