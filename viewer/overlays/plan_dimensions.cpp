#include "viewer/overlays/plan_dimensions.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

namespace viewer {
namespace {

using model::Vec2;

constexpr double kFirstLine = 1.55;  // metres from the wall to its dimension line
constexpr double kStep = 0.75;       // to the next line further off
constexpr double kNearLine = 0.8;    // in a narrow court
constexpr double kFirstPixels = 30;  // the same where metres are small on the sheet
constexpr double kStepPixels = 17, kNearPixels = 16;
constexpr double kTouchPixels = 7;  // lines in one direction keep that far apart

struct Segment {
  Vec2 a{0, 0}, b{0, 0};
};

Vec2 leftOf(const Vec2& v) { return {-v.y, v.x}; }

bool crossing(const Segment& p, const Segment& q) {
  const Vec2 r = p.b - p.a, s = q.b - q.a;
  const double across = model::cross(r, s);
  if (std::abs(across) < 1e-9) return false;
  const double t = model::cross(q.a - p.a, s) / across, u = model::cross(q.a - p.a, r) / across;
  return t > 0.001 && t < 0.999 && u > 0.001 && u < 0.999;
}

// Side by side, nearer than `apart`, over some of their lengths.
bool alongside(const Segment& p, const Segment& q, double apart) {
  const Vec2 d = glm::normalize(p.b - p.a);
  if (std::abs(model::cross(d, glm::normalize(q.b - q.a))) > 0.1) return false;
  if (std::abs(model::cross(d, (q.a + q.b) * 0.5 - p.a)) > apart) return false;
  const double length = glm::length(p.b - p.a);
  const double u = glm::dot(q.a - p.a, d), v = glm::dot(q.b - p.a, d);
  return std::min(length, std::max(u, v)) - std::max(0.0, std::min(u, v)) > apart * 0.2;
}

double distanceTo(const Segment& s, const Vec2& p) {
  const Vec2 d = s.b - s.a;
  const double t = std::clamp(glm::dot(p - s.a, d) / std::max(1e-12, glm::dot(d, d)), 0.0, 1.0);
  return glm::length(p - s.a - d * t);
}

class Planner {
 public:
  Planner(const model::SettingOut& out, const PlanRoom& room) : out_(out), room_(room) {}

  // What is against a line there, in no unit; less is better.
  double against(const Segment& line, bool offset) const {
    double sum = 0;
    for (const model::WallLine& wall : out_.walls)
      if (crossing(line, {wall.start, wall.end})) sum += 3;
    if (!offset && model::contains(out_.outline, (line.a + line.b) * 0.5)) sum += 5;
    for (const Segment& other : lines_) {
      if (alongside(line, other, kTouchPixels / room_.metre)) sum += 4;
      if (crossing(line, other)) sum += 1;
    }
    for (const Vec2& place : room_.places)
      if (distanceTo(line, place) < room_.placeRadius) sum += 0.7;
    for (const Vec2& p : {line.a, line.b, (line.a + line.b) * 0.5})
      if (p.x < room_.low.x || p.y < room_.low.y || p.x > room_.high.x || p.y > room_.high.y)
        sum += 2;
    return sum;
  }
  void take(const Segment& line) { lines_.push_back(line); }

  PlanDimension alongWall(const model::WallLine& wall) const {
    const double first = std::max(kFirstLine, kFirstPixels / room_.metre);
    const double step = std::max(kStep, kStepPixels / room_.metre);
    std::vector<double> offs{first, std::max(kNearLine, kNearPixels / room_.metre)};
    for (int i = 1; i <= 4; ++i) offs.push_back(first + i * step);
    constexpr double kFurther = 0.25;  // of like places the first
    double least = 1e300, off = first;
    for (size_t i = 0; i < offs.size(); ++i) {
      const Vec2 by = wall.outward * offs[i];
      const double sum = against({wall.start + by, wall.end + by}, false) + kFurther * double(i);
      if (sum < least - 1e-9) least = sum, off = offs[i];
    }
    const Vec2 by = wall.outward * off;
    return {wall.start + by, wall.end + by, wall.outward, wall.length,
            false,           wall.start,    wall.end,     off};
  }

  PlanDimension across(const model::SiteOffset& offset, const Slide& slide) const {
    const Vec2 left = leftOf(glm::normalize(offset.at - offset.from));
    const double length = slide.forth - slide.back;
    double least = 1e300, by = 0;
    for (const double part : {0.5, 0.35, 0.65, 0.2, 0.8, 0.08, 0.92}) {
      const double move = slide.back + length * part;
      const Vec2 aside = left * move;
      const double sum =
          against({offset.from + aside, offset.at + aside}, true) + std::abs(part - 0.5) * 0.1;
      if (sum < least - 1e-9) least = sum, by = move;
    }
    return {offset.from + left * by, offset.at + left * by, left, offset.distance, true, {}, {}, 0};
  }

 private:
  const model::SettingOut& out_;
  const PlanRoom& room_;
  std::vector<Segment> lines_;
};

// How far one may go from `p` along `d` and against it on a side of the polygon that holds `p` and
// runs that way.
Slide roomOn(const model::Polygon& polygon, const Vec2& p, const Vec2& d) {
  constexpr double kOn = 0.002;
  Slide slide;
  for (size_t i = 0; i < polygon.size(); ++i) {
    const Segment side{polygon[i], polygon[(i + 1) % polygon.size()]};
    const Vec2 way = side.b - side.a;
    const double length = glm::length(way);
    if (length < kOn || std::abs(model::cross(way / length, d)) > 1e-4) continue;
    if (distanceTo(side, p) > kOn) continue;
    const double u = glm::dot(side.a - p, d), v = glm::dot(side.b - p, d);
    slide.back = std::min({slide.back, u, v});
    slide.forth = std::max({slide.forth, u, v});
  }
  return slide;
}

model::Polygon otherOutline(const model::Job& job, const std::string& name) {
  const model::Outline& boundary = job.site.boundary;
  for (size_t i = 0; i < boundary.size(); ++i)
    if (name == "boundary " + std::to_string(i + 1))
      return {boundary[i], boundary[(i + 1) % boundary.size()]};
  for (const model::StandingBuilding& building : job.site.buildings)
    if (building.name == name) return building.outline;
  return {};
}

}  // namespace

Slide slideOf(const model::SiteOffset& offset, const model::Polygon& from,
              const model::Polygon& to) {
  const Vec2 left = leftOf(glm::normalize(offset.at - offset.from));
  const Slide a = roomOn(from, offset.from, left), b = roomOn(to, offset.at, left);
  return {std::max(a.back, b.back), std::min(a.forth, b.forth)};
}

std::vector<PlanDimension> planDimensions(const model::Job& job, const model::SettingOut& out,
                                          const std::vector<model::SiteOffset>& offsets,
                                          const PlanRoom& room) {
  Planner planner(out, room);
  std::vector<PlanDimension> dimensions;
  for (const model::WallLine& wall : out.walls) {
    dimensions.push_back(planner.alongWall(wall));
    planner.take({dimensions.back().from, dimensions.back().to});
  }
  const model::Polygon face = out.ring(out.faceDistances.finishedFace);
  for (const model::SiteOffset& offset : offsets) {
    if (offset.distance < kTouching) continue;
    const Slide slide = slideOf(offset, face, otherOutline(job, offset.to));
    dimensions.push_back(planner.across(offset, slide));
    planner.take({dimensions.back().from, dimensions.back().to});
  }
  return dimensions;
}

}  // namespace viewer
