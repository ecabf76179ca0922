#include "model/job/garden_outline.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

namespace model {

namespace {

double halfModule(const WallBuildUp& walls) { return (walls.brickLength + walls.joint) / 2; }

Vec2 leftOf(const Vec2& a, const Vec2& b) {
  const Vec2 along = glm::normalize(b - a);
  return {-along.y, along.x};
}

}  // namespace

double gardenThickness(const WallBuildUp& walls, double bricks) {
  return std::round(2 * bricks) * halfModule(walls) - walls.joint;
}

Polygon gardenFootprint(const WallBuildUp& walls, const GardenWall& wall) {
  const std::vector<Vec2>& line = wall.line;
  const double thickness = gardenThickness(walls, wall.bricks);
  Polygon footprint(line.begin(), line.end());
  for (size_t i = line.size(); i-- > 0;) {
    const Vec2 before = i > 0 ? leftOf(line[i - 1], line[i]) : leftOf(line[0], line[1]);
    const Vec2 after = i + 1 < line.size() ? leftOf(line[i], line[i + 1]) : before;
    const Vec2 both = before + after;
    footprint.push_back(line[i] + both * (2 * thickness / glm::dot(both, both)));
  }
  return footprint;
}

double gardenFooting(const WallBuildUp& walls, const GardenWall& wall) {
  return (wall.foundationWidth - gardenThickness(walls, wall.bricks)) / 2;
}

double gardenReach(const WallBuildUp& walls, const GardenWall& wall) {
  const double out = (wall.pierBricks - wall.bricks) * 2 * halfModule(walls);
  return gardenFooting(walls, wall) + std::max(0.0, out);
}

int gardenCourses(const WallBuildUp& walls, const GardenWall& wall) {
  return static_cast<int>(std::lround((wall.top - wall.base) / walls.course()));
}

double gardenGauge(const WallBuildUp& walls, const GardenWall& wall) {
  return (wall.top - wall.base) / gardenCourses(walls, wall);
}

std::optional<int> gardenDampCourse(const WallBuildUp& walls, const GardenWall& wall) {
  constexpr double kOnCourse = 1e-3;  // metres
  if (!wall.dampCourse) return std::nullopt;
  const double up = *wall.dampCourse - wall.base + kOnCourse;
  return static_cast<int>(std::floor(up / gardenGauge(walls, wall)));
}

double gardenCorbel(const WallBuildUp& walls, const GardenWall& wall, int course) {
  const int plain = gardenCourses(walls, wall) - wall.corbelCourses;
  return std::max(0, course - plain + 1) * wall.corbelStep;
}

bool gardenPierFits(const GardenWall& wall) {
  const long n = std::lround(2 * wall.bricks), m = std::lround(2 * wall.pierBricks);
  if (m == 0) return true;
  if (n > 2 || m <= n || m > n + 2 || wall.bond == BondKind::Stack) return false;
  // Joints of the wall would lie over the pier's own.
  const bool even = wall.bond == BondKind::Stretcher || wall.bond == BondKind::English;
  if (n == 1 && m == 3) return even;
  return wall.bond != BondKind::EnglishGardenWall || m % 2 == 0;
}

}  // namespace model
