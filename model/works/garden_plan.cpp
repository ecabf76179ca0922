#include "model/works/garden_plan.h"

#include <cmath>

#include <glm/geometric.hpp>

#include "model/geometry/grown.h"
#include "model/job/garden_outline.h"

namespace model {

namespace {

SolidEnd cornerOf(const Vec2& in, const Vec2& out) {
  return cross(in, out) > 0 ? SolidEnd::CornerAtFace : SolidEnd::CornerAtBack;
}

SolidPiers piersOf(const GardenWall& wall) {
  return {static_cast<int>(std::lround(2 * wall.pierBricks)), wall.pierEvery};
}

}  // namespace

Polygon GardenPlan::pierSquare(const GardenLength& length, const SolidPierPlace& place,
                               double margin) const {
  const double front = -pierBefore - margin, back = pierSize - pierBefore + margin;
  return {length.at(place.from - margin, front), length.at(place.to + margin, front),
          length.at(place.to + margin, back), length.at(place.from - margin, back)};
}

std::vector<std::array<double, 2>> GardenPlan::betweenPiers(const GardenLength& length,
                                                            double margin) const {
  constexpr double kNothing = 1e-6;  // a pier at the end ends there but for rounding
  std::vector<std::array<double, 2>> parts;
  double from = 0;
  for (const SolidPierPlace& place : length.run.piers) {
    if (place.from - margin > from + kNothing) parts.push_back({from, place.from - margin});
    from = place.to + margin;
  }
  if (from < length.length - kNothing) parts.push_back({from, length.length});
  return parts;
}

Polygon GardenPlan::part(const GardenLength& length, double s0, double s1, double d0,
                         double d1) const {
  const bool start = s0 <= 0 && !length.freeStart, end = s1 >= length.length && !length.freeEnd;
  const auto from = [&](double d) { return start ? length.startAt(d) : s0; };
  const auto to = [&](double d) { return end ? length.endAt(d) : s1; };
  return {length.at(from(d0), d0), length.at(to(d0), d0), length.at(to(d1), d1),
          length.at(from(d1), d1)};
}

SolidEnd GardenPlan::cornerBefore(size_t length) const {
  return cornerOf(lengths[length - 1].frame.along, lengths[length].frame.along);
}

double GardenPlan::levelOf(int course) const {
  return course == courses ? wall->top : wall->base + course * gauge;
}

GardenPlan planGardenWall(const Job& job, const GardenWall& wall) {
  GardenPlan plan;
  plan.wall = &wall;
  plan.sizes = solidSizes(job.walls, wall);
  plan.courses = gardenCourses(job.walls, wall);
  plan.gauge = gardenGauge(job.walls, wall);
  plan.plain = plan.courses - wall.corbelCourses;
  plan.corbel = gardenCorbel(job.walls, wall, plan.courses - 1);
  plan.dampCourse = gardenDampCourse(job.walls, wall);
  const SolidPiers piers = piersOf(wall);
  if (piers.halfBricks > 0) {
    plan.pierSize = piers.halfBricks * plan.sizes.half() - plan.sizes.joint;
    plan.pierBefore = pierBeforeFace(plan.sizes, piers.halfBricks);
  }
  const double thickness = plan.sizes.thickness();
  const Polygon footprint = gardenFootprint(job.walls, wall);
  const size_t last = wall.line.size() - 1;
  for (size_t i = 0; i < last; ++i) {
    const Vec2 a = wall.line[i], b = wall.line[i + 1];
    GardenLength length;
    length.length = glm::distance(a, b);
    length.frame.start = a;
    length.frame.along = (b - a) / length.length;
    length.frame.inward = {-length.frame.along.y, length.frame.along.x};
    length.freeStart = i == 0;
    length.freeEnd = i + 1 == last;
    SolidLength laid{0,    length.length, SolidEnd::Stop, SolidEnd::Stop, static_cast<int>(i % 2),
                     piers};
    // The back's corners are the footprint's second half, from the end.
    const auto skew = [&](size_t corner) {
      const Vec2 back = footprint[2 * last + 1 - corner] - wall.line[corner];
      return glm::dot(back, length.frame.along) / thickness;
    };
    if (!length.freeStart) {
      length.skewStart = skew(i);
      laid.start = cornerOf(a - wall.line[i - 1], b - a);
      if (laid.start == SolidEnd::CornerAtBack) laid.from = -thickness;
    }
    if (!length.freeEnd) {
      length.skewEnd = skew(i + 1);
      laid.end = cornerOf(b - a, wall.line[i + 2] - b);
      if (laid.end == SolidEnd::CornerAtBack) laid.to += thickness;
    }
    length.run = laySolidRun(plan.sizes, laid);
    plan.lengths.push_back(std::move(length));
  }
  return plan;
}

GardenGround gardenGround(const Job& job, const GardenPlan& plan) {
  GardenGround ground;
  const GardenWall& wall = *plan.wall;
  const double footing = gardenFooting(job.walls, wall);
  ground.concrete = grown(gardenFootprint(job.walls, wall), footing);
  for (const GardenLength& length : plan.lengths) {
    for (const SolidPierPlace& place : length.run.piers) {
      ground.concrete = unite(ground.concrete, {{plan.pierSquare(length, place, footing), {}}});
      ground.footprint.push_back(plan.pierSquare(length, place));
    }
    for (const auto& [from, to] : plan.betweenPiers(length))
      ground.footprint.push_back(plan.part(length, from, to, 0, plan.sizes.thickness()));
  }
  ground.base = wall.base;
  ground.underside = wall.base - wall.foundationThickness;
  return ground;
}

std::string gardenWallName(const Job& job, size_t index) {
  const std::string& name = job.gardenWalls[index].name;
  return name.empty() ? "Garden wall " + std::to_string(index + 1) : name;
}

std::string gardenWallId(size_t index) { return "garden wall " + std::to_string(index + 1); }

}  // namespace model
