// One row of a course as widths in quarter bricks, from both ends to where they meet.
#pragma once

#include <vector>

#include "model/bond/solid_run.h"

namespace model {

// What a course begins with at an end, and then repeats; quarter bricks.
struct QuarterOrder {
  std::vector<int> first, then;
};

// A row closed in the middle: the joints from 0 to the total, both included; and the length
// that is filled out of order (empty where from == to).
struct QuarterCourse {
  std::vector<double> joints;
  double from = 0, to = 0;
};

// Where a course is closed: about its middle, within its ends.
struct ClosingPlace {
  double from = 0, to = 0;
  double middle() const { return (from + to) / 2; }
};

// Every way to close a course of `total` quarters in that place and not far from its middle, the
// best first: in order, with a whole brick or header, with a three-quarter or cut piece, with two.
std::vector<QuarterCourse> closings(const QuarterOrder& start, const QuarterOrder& end,
                                    double total, const ClosingPlace& place);

// The least distance between joints of two courses, their ends left out; quarter bricks.
double leastLap(const QuarterCourse& a, const QuarterCourse& b);

// One closing for each course of a face so that each laps over the next, and the last over the
// first, by a quarter or as nearly so as can be.
std::vector<QuarterCourse> lapped(const std::vector<std::vector<QuarterCourse>>& courses);

}  // namespace model
