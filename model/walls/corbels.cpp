#include "model/walls/corbels.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace model {

namespace {

constexpr double kOnLevel = 1e-3;  // metres
constexpr double kSquare = 0.01;   // radians: as square as a corner is bonded square
constexpr double kFar = 1e6;

int firstCourseOf(const Job& job, const SettingOut& settingOut, const Corbel& corbel) {
  const double over = corbel.level - settingOut.levels.dampCourse;
  return static_cast<int>(std::floor((over + kOnLevel) / job.walls.course()));
}

// Bricks are laid round it, not mitred: at a right angle, outside or inside.
bool isSquare(const Corner& corner) {
  const double quarter = std::numbers::pi / 2;
  return std::fabs(corner.angle - quarter) < kSquare ||
         std::fabs(corner.angle - 3 * quarter) < kSquare;
}

}  // namespace

std::vector<CorbelPlan> corbelsOn(const Job& job, const SettingOut& settingOut, size_t wall) {
  const size_t n = settingOut.walls.size();
  const WallLine& line = settingOut.walls[wall];
  const double clear = job.walls.brickLength + job.walls.joint;
  std::vector<CorbelPlan> found;
  for (size_t i = 0; i < job.corbels.size(); ++i) {
    const Corbel& drawn = job.corbels[i];
    if (settingOut.wallNamed(drawn.wall) != wall) continue;
    CorbelPlan plan;
    plan.corbel = i;
    plan.firstCourse = firstCourseOf(job, settingOut, drawn);
    plan.courses = drawn.courses;
    plan.step = drawn.step;
    plan.low = settingOut.levels.dampCourse + plan.firstCourse * job.walls.course();
    plan.high = plan.low + plan.courses * job.walls.course();
    const auto goesOn = [&](size_t next, size_t corner) {
      return isSquare(settingOut.corners[corner]) &&
             std::any_of(job.corbels.begin(), job.corbels.end(), [&](const Corbel& other) {
               return settingOut.wallNamed(other.wall) == next && other.courses == drawn.courses &&
                      std::fabs(other.step - drawn.step) < 1e-9 &&
                      firstCourseOf(job, settingOut, other) == plan.firstCourse;
             });
    };
    plan.turns = {goesOn((wall + n - 1) % n, line.from), goesOn((wall + 1) % n, line.to)};
    plan.from = plan.turns[0] ? -kFar : clear;
    plan.to = plan.turns[1] ? kFar : line.length - clear;
    found.push_back(plan);
  }
  return found;
}

}  // namespace model
