// Garden walls on plan: their straight lengths as they are bonded, their piers, what they take of
// the ground.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/bond/solid_run.h"
#include "model/geometry/polygon.h"
#include "model/job/job.h"

namespace model {

// Of the stage that digs and pours: how much goes by until all trenches are dug.
inline constexpr double kGardenDug = 0.6;
// Of the stage that builds: until the brickwork is up, and until the trenches are filled in.
inline constexpr double kGardenBricksUp = 0.8, kGardenFilled = 0.9;

// One straight length. Where it meets another the two are mitred on plan: their brickwork is
// bonded there, course by course.
struct GardenLength {
  UnitFrame frame;                    // s along the face, d from it into the wall
  double length = 0;                  // of the face
  double skewStart = 0, skewEnd = 0;  // by how much s moves at its ends for each metre of d
  bool freeStart = true, freeEnd = true;
  SolidRun run;

  // s of its ends at depth d.
  double startAt(double d) const { return skewStart * d; }
  double endAt(double d) const { return length + skewEnd * d; }
  Vec2 at(double s, double d) const { return frame.start + frame.along * s + frame.inward * d; }
};

struct GardenPlan {
  const GardenWall* wall = nullptr;  // of the job it was made from
  SolidSizes sizes;
  int courses = 0;
  double gauge = 0;               // of one course with its bed
  int plain = 0;                  // courses under the corbelled ones
  double corbel = 0;              // how far the last course stands out past the wall's faces
  std::optional<int> dampCourse;  // the course on it
  double pierSize = 0;            // side of the piers' square; 0: none
  double pierBefore = 0;          // how far they stand before the face
  std::vector<GardenLength> lengths;

  // A pier's square with a margin round it, anticlockwise.
  Polygon pierSquare(const GardenLength& length, const SolidPierPlace& place,
                     double margin = 0) const;
  // The lengths of a wall between its piers, on the face: with `margin`, less that beside each.
  std::vector<std::array<double, 2>> betweenPiers(const GardenLength& length,
                                                  double margin = 0) const;
  // The corner where a length begins that is not the first.
  SolidEnd cornerBefore(size_t length) const;
  // Level of the top of so many courses.
  double levelOf(int course) const;
  // The wall from s0 to s1 and from depth d0 to d1, anticlockwise, mitred where that is its end.
  Polygon part(const GardenLength& length, double s0, double s1, double d0, double d1) const;
};

// What a garden wall takes of the ground.
struct GardenGround {
  Regions concrete;                // its strip, wider under the piers
  std::vector<Polygon> footprint;  // of its brickwork, part by part
  double base = 0, underside = 0;  // levels of the concrete
};

GardenPlan planGardenWall(const Job& job, const GardenWall& wall);
GardenGround gardenGround(const Job& job, const GardenPlan& plan);

// "Front wall", or "Garden wall 2" where it has no name; "garden wall 2" in ids.
std::string gardenWallName(const Job& job, size_t index);
std::string gardenWallId(size_t index);

}  // namespace model
