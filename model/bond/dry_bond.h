// The outer leaf laid dry: where every cross joint comes, course by course, right round the
// outline.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "model/bond/laid_piece.h"
#include "model/bond/stretch.h"
#include "model/settingout/setting_out.h"

namespace model {

// One length of a wall between places where the bond should come out: corners and jambs.
struct DryStretch {
  double from = 0, to = 0;        // stations, s
  std::optional<size_t> opening;  // into SettingOut::openings: the one it lies under; none: a pier
  bool movement = false;          // a movement joint, in which nothing lies
  std::string first, last;        // what it lies between: "corner A", "Kitchen window"
  StretchFit fit;
};

// An opening that the bond of the wall is not made for: an upper one whose jambs do not fall on the
// joints below. Metres from each jamb to the nearest station, + when that lies nearer the wall's
// end.
struct OffBond {
  size_t opening = 0;  // into SettingOut::openings
  double atStart = 0, atEnd = 0;
};

// How a wall's outer leaf ends at a corner in each of the two courses.
struct BondEnd {
  std::array<double, 2> face{};   // s of the end of the brickwork, by course
  std::array<bool, 2> through{};  // this wall's brick makes the corner
  bool special = false;           // an angle brick: the corner is not square
};

struct WallBond {
  size_t wall = 0;
  std::vector<DryStretch> stretches;  // in order, corner to corner
  // By course of the bond (see courseOf), in order; of courses with no opening.
  std::vector<std::vector<CrossJoint>> joints;
  std::vector<std::array<double, 2>> straight;  // movement joints, from edge to edge
  bool odd = false;  // it runs through at one end in the course in which it butts at the other
  BondEnd start, end;
  std::vector<OffBond> offBond;
};

struct DryBond {
  BrickSizes sizes;
  std::vector<WallBond> walls;  // by wall
  // Stretches whose bond is broken only so that the courses meet in order all round: wall and
  // stretch. At most one.
  std::vector<std::array<size_t, 2>> brokenToClose;
};

// Which of two courses that change about lies over so many whole ones above the damp course.
inline size_t courseParity(int above) { return static_cast<size_t>(((above % 2) + 2) % 2); }
// Which of the courses of a bond does.
size_t courseOf(BondKind bond, int above);

// Corners turn in any bond: in each course one of the two walls runs through, in the next the
// other. The openings of the lowest storey that has any in a wall set its bond, and those above
// whose jambs leave room; what the others miss it by is in `offBond`. Movement joints part a wall:
// the bond is made for each side.
DryBond deriveDryBond(const Job& job, const SettingOut& settingOut);

// Course number `above` of a wall over the damp course, from 0 (below it from -1 down), around what
// is open at its level: `open` are lengths from jamb to jamb. Pieces are in order along the face;
// behind the face of a wall of one brick or more come those of its other rows.
std::vector<LaidPiece> layCourse(const DryBond& bond, size_t wall, int above,
                                 const std::vector<std::array<double, 2>>& open);

}  // namespace model
