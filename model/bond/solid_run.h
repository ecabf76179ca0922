// Solid walls of garden and area: courses laid on a grid of quarter bricks along the wall and half
// bricks across it, bonded from both ends so that they close in the middle.
#pragma once

#include <array>
#include <vector>

#include "model/bond/masonry_unit.h"
#include "model/job/job.h"

namespace model {

// Metres. Two bricks and a joint across are a brick along, as in every format with a bond.
struct SolidSizes {
  double brick = 0.215;
  double joint = 0.010;
  double least = 0.008, most = 0.012;  // of the cross joints
  int halfBricks = 2;                  // thickness
  BondKind bond = BondKind::English;

  double half() const { return (brick + joint) / 2; }
  double quarter() const { return half() / 2; }
  double thickness() const { return halfBricks * half() - joint; }
};

SolidSizes solidSizes(const WallBuildUp& walls, const GardenWall& wall);

// How a straight length ends: free, or at a square corner whose outer side is the wall's face
// (d = 0) or its back.
enum class SolidEnd { Stop, CornerAtFace, CornerAtBack };

struct SolidPiers {
  int halfBricks = 0;  // size; 0: none
  double every = 0;    // most between their middles; 0: only at free ends
};

// One straight length, from outer corner (or free end) to outer corner; metres along the face.
struct SolidLength {
  double from = 0, to = 0;
  SolidEnd start = SolidEnd::Stop, end = SolidEnd::Stop;
  int shift = 0;  // by how many courses it is ahead: lengths that meet at a corner differ by one
  SolidPiers piers;
};

// A brick or a piece of one on plan; d from the face into the wall.
struct SolidPiece {
  double s0 = 0, s1 = 0, d0 = 0, d1 = 0;
  Piece piece = Piece::Whole;
  bool header = false;
};

struct SolidPierPlace {
  double from = 0, to = 0;  // along the face
  bool fromEnd = false;     // its place is counted from the length's end: laid the other way round
  bool atFreeEnd = false;
};

struct SolidRun {
  // Repeated upward; course n, counted from the foundation, is courses[n % size].
  std::vector<std::vector<SolidPiece>> courses;
  std::vector<bool> through;  // by course: the wall goes through its piers, else it stops at them
  std::vector<SolidPierPlace> piers;
  std::array<double, 2> broken{0, 0};  // where the bond is closed by other than its own order
  double cut = 0;                      // a piece there is cut to this; 0: whole pieces come out
};

SolidRun laySolidRun(const SolidSizes& sizes, const SolidLength& length);

// By how much a pier of that many half bricks stands out before the wall's face: half of what it is
// thicker where that is whole half bricks, else nothing and all of it stands out at the back.
double pierBeforeFace(const SolidSizes& sizes, int pierHalfBricks);

// The pier's own bricks in a course, s and d from the corner of its square: all of it where the
// wall stops, else what the wall leaves. Sizes one and two half bricks over the wall's, of walls up
// to a brick thick.
std::vector<SolidPiece> layPier(const SolidSizes& sizes, int pierHalfBricks, bool through,
                                const SolidPierPlace& place);

}  // namespace model
