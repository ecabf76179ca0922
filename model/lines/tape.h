// What is checked with a tape: sides and diagonals, two distances that fix each corner, and a big
// triangle at each.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"

namespace model {

// From corner to corner of the outer face, with the tape held level.
struct Tape {
  size_t from = 0, to = 0;  // corners
  double length = 0;
  bool side = false;  // along a wall
  // What a tape laid on the ground from corner to corner reads more than the level distance.
  double moreOnGround = 0;
  bool tooLong = false;  // for the job's tape: in two lengths, in line
};

// A corner where the arcs of two tapes held at corners that are there already cross.
struct TapeFix {
  size_t corner = 0;
  std::array<Tape, 2> tapes;  // both from set-out corners to this one
  double angle = 0;           // degrees at which they cross; 90 is best
  bool weak = false;          // crossing flatter than 30 degrees: check it twice over
  std::optional<Tape> check;  // to a third corner
};

// Marks along the two lines that meet in a corner, and the distance straight across between them.
struct CornerTriangle {
  size_t corner = 0;
  double angle = 0;  // degrees between the lines, at most 180
  bool square = false;
  bool inLine = false;  // the lines are one: no triangle, pull one string through
  // From the corner: along the wall before it and the wall after it, a whole 100 mm each; 0 where
  // the walls are too short for one.
  double before = 0, after = 0;
  double across = 0;
  std::array<int, 3> ratio{};  // of a square corner: {3, 4, 5}, shorter leg first
};

struct TapeChecks {
  size_t base = 0;              // the wall that everything is fixed from
  std::vector<Tape> sides;      // by wall
  std::vector<Tape> diagonals;  // of a four-cornered plan both; of another those that fixes use
  std::vector<TapeFix> fixes;   // in the order of setting out
  std::vector<CornerTriangle> corners;  // by corner
  std::vector<std::string> words;       // why, for people: a sentence each
};

TapeChecks deriveTapeChecks(const Job& job, const SettingOut& settingOut);

// A rectangle of sides a and b whose diagonals differ by `difference` leans by this much over b,
// metres: difference * diagonal / (2 a b) is the angle in radians (trigonometry of the two
// triangles that the diagonals make, to the first order).
double outOfSquare(double difference, double a, double b);

// A tape laid from end to end of a level distance with a fall of `fall` reads this much more.
double moreOnSlope(double level, double fall);

// The largest triangle of whole 100 mm with a square corner that fits along lines of these lengths,
// no side longer than the tape: 3-4-5, or another whole-number triangle where that checks the
// corner better by a tenth and more (the distance across changes more as the corner turns). All
// zero when none fits.
CornerTriangle squareTriangle(double before, double after, double tape);

}  // namespace model
