#include "model/settingout/rod_courses.h"

#include <algorithm>
#include <cmath>

namespace model {

namespace {

// Common practice, no source.
constexpr double kThinnestBed = 0.005, kThickestBed = 0.025;
constexpr double kLowestCut = 0.025;  // of a cut brick
constexpr double kNothing = 5e-4;     // metres: nobody cuts less

struct Piece {
  double bed = 0, unit = 0;
  CourseKind kind = CourseKind::Whole;
};

Piece cut(const WallBuildUp& walls, double height) {
  return {walls.joint, height - walls.joint, CourseKind::Cut};
}

// From the damp course outwards: whole courses, then what the rest takes.
std::vector<Piece> piecesOf(const WallBuildUp& walls, double height) {
  std::vector<Piece> pieces;
  if (height < kNothing) return pieces;
  const double course = walls.course();
  const auto whole = static_cast<size_t>(std::floor((height + kNothing) / course));
  double rest = height - double(whole) * course;
  pieces.assign(whole, {walls.joint, walls.brickHeight, CourseKind::Whole});
  if (std::fabs(rest) < kNothing) {
    // What no rule shows; kept, so that the courses add up exactly.
    pieces.back().bed += rest;
  } else if (whole > 0 && walls.joint + rest <= kThickestBed + kNothing) {
    pieces.back() = {walls.joint + rest, walls.brickHeight, CourseKind::OddBed};
  } else if (walls.joint - (course - rest) >= kThinnestBed - kNothing) {
    pieces.push_back({walls.joint - (course - rest), walls.brickHeight, CourseKind::OddBed});
  } else if (rest - walls.joint >= kLowestCut - kNothing) {
    pieces.push_back(cut(walls, rest));
  } else if (whole > 0) {
    // Two cut courses, to whole millimetres, in place of one that is whole and a sliver.
    const double both = course + rest;
    const double first = std::ceil(both * 500 - 1e-6) / 1000;
    pieces.back() = cut(walls, first);
    pieces.push_back(cut(walls, both - first));
  } else {
    pieces.push_back({rest, 0, CourseKind::BedOnly});
  }
  return pieces;
}

}  // namespace

std::vector<RodCourse> rodCourses(const WallBuildUp& walls, double foot, double dampCourse,
                                  double top) {
  const double middle = std::clamp(dampCourse, foot, std::max(foot, top));
  std::vector<RodCourse> courses;
  double level = middle;
  int number = 0;
  for (const Piece& piece : piecesOf(walls, middle - foot)) {
    level -= piece.bed + piece.unit;
    courses.push_back({--number, level, piece.bed, piece.unit, piece.kind});
  }
  std::reverse(courses.begin(), courses.end());
  level = middle;
  number = 0;
  for (const Piece& piece : piecesOf(walls, top - middle)) {
    courses.push_back({++number, level, piece.bed, piece.unit, piece.kind});
    level += piece.bed + piece.unit;
  }
  return courses;
}

}  // namespace model
