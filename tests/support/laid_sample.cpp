#include "tests/support/laid_sample.h"

#include <algorithm>

#include "tests/support/sample_model.h"

namespace support {

namespace {

constexpr double kThick = 0.3, kBrick = 0.215, kJoint = 0.010, kCourse = 0.075, kBottom = -0.5;
constexpr int kCourses = 40;

void layCourse(model::Works& works, int course, double from, double to) {
  const bool shifted = course % 2 != 0;
  double s = from;
  for (int i = 0; s < to - 0.02; ++i) {
    const double length = shifted && i == 0 ? (kBrick - kJoint) / 2 : kBrick;
    model::MasonryUnit unit;
    unit.s0 = s;
    unit.s1 = std::min(s + length, to);
    unit.z0 = kBottom + course * kCourse + kJoint;
    unit.z1 = kBottom + (course + 1) * kCourse;
    unit.d1 = static_cast<float>(kThick);
    unit.course = static_cast<std::int16_t>(course);
    if (unit.length() < kBrick - 1e-6)
      unit.piece = shifted && i == 0 ? model::Piece::Half : model::Piece::Cut;
    works.units.push_back(unit);
    s = unit.s1 + kJoint;
  }
}

void split(model::Works& works, size_t at) {
  model::MasonryUnit upper = works.units[at];
  works.units[at].z1 = works.units[at].z0 + 0.03;
  upper.z0 = works.units[at].z1 + 0.008;
  works.units[at].piece = upper.piece = model::Piece::Split;
  works.units.insert(works.units.begin() + static_cast<std::ptrdiff_t>(at) + 1, upper);
}

}  // namespace

model::Model laidSample() {
  model::Model m = sampleModel();
  struct Wall {
    unsigned element;
    model::Vec2 start, along;
    double length;
    bool throughFirst;
  };
  const model::Vec2 origin(100, 0);
  for (const Wall& wall :
       {Wall{kSouthWall, {-4, -3}, {1, 0}, 8, true}, Wall{kEastWall, {4, -3}, {0, 1}, 6, false},
        Wall{kNorthWall, {4, 3}, {-1, 0}, 8, true}, Wall{kWestWall, {-4, 3}, {0, -1}, 6, false}}) {
    model::Element& element = m.works.elements[wall.element];
    element.firstUnit = m.works.units.size();
    element.frame = m.works.frames.size();
    model::UnitFrame frame;
    frame.start = origin + wall.start;
    frame.along = wall.along;
    frame.inward = {-wall.along.y, wall.along.x};
    m.works.frames.push_back(frame);
    for (int course = 0; course < kCourses; ++course) {
      const bool through = (course % 2 == 0) == wall.throughFirst;
      const double in = through ? 0 : kThick + kJoint;
      const size_t first = m.works.units.size();
      layCourse(m.works, course, in, wall.length - in);
      if (wall.element == kSouthWall && course == 5) split(m.works, first + 2);
    }
    element.unitCount = m.works.units.size() - element.firstUnit;
    for (size_t i = 0; i < element.unitCount; ++i)
      m.works.units[element.firstUnit + i].when =
          static_cast<float>(i) / static_cast<float>(element.unitCount);
  }
  return m;
}

}  // namespace support
