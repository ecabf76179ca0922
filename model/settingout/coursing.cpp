#include "model/settingout/coursing.h"

#include <algorithm>
#include <cmath>

#include "model/settingout/derive.h"

namespace model {

namespace {
constexpr double kOnCourse = 1e-6;  // metres
}

double courseNear(double level, double datum, double course) {
  return datum + course * std::round((level - datum) / course);
}

double courseAtOrUnder(double level, double datum, double course) {
  return datum + course * std::floor((level - datum + kOnCourse) / course);
}

double coordinatingLength(const WallBuildUp& walls, int halfBricks, int joints) {
  return halfBricks * (walls.brickLength + walls.joint) / 2 + joints * walls.joint;
}

int halfBricksOfOpening(const WallBuildUp& walls, double width) {
  const double half = (walls.brickLength + walls.joint) / 2;
  return std::max(1, static_cast<int>(std::lround((width - walls.joint) / half)));
}

double outerLeafStop(const Job& job, const Levels& levels, double level) {
  return std::min(courseAtOrUnder(level, levels.dampCourse, job.walls.course()),
                  levels.outerLeafTop);
}

double cutBlockCourse(const WallBuildUp& walls, double height) {
  constexpr double kOut = 5e-4;  // metres: nobody cuts less
  const double course = walls.blockHeight + walls.joint;
  const double left = height - course * std::floor((height + kOut) / course);
  return left > kOut ? left : 0;
}

}  // namespace model
