// The level book: what was read on the staff, row by row as it is booked on site, and what is known
// beforehand. Knows marks and points by their names only. Metres; readings on a staff held upside
// down (on a soffit) are negative.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "model/problems.h"

namespace model {

// A mark whose level is known: a bench mark of the job.
struct Mark {
  std::string name;
  double level = 0;
};

// Where the cells of a booking stand in its file; typed bookings have only lines.
struct BookingPlaces {
  Place point, backsight, intermediate, foresight, distance, known, booked;
};

// One row. The first has a backsight on a mark; a change point has a foresight from the set-up
// before it and a backsight from the one after; the last has a foresight. All others are
// intermediate sights.
struct Booking {
  std::string point;
  std::optional<double> backsight, intermediate, foresight;
  std::optional<double> distance;  // along the way levelled, from the first point
  std::optional<double> known;     // the point's level, known beforehand
  std::optional<double> booked;    // its reduced level as worked out by hand, to be checked
  std::string remark;
  BookingPlaces places;
};

// Without the places, which say only where it was read.
bool operator==(const Booking& a, const Booking& b);

struct LevelBook {
  std::vector<Booking> bookings;
};

// How large a closing error may be before the work is done again.
//
// For each set-up: 5 mm times the root of their number, in whole millimetres. Source: [SKAA-1023],
// precision of levelling: 5 mm, three set-ups, 9 mm; it names 30 mm for earthworks and 3 mm for
// steel and concrete. For each kilometre, where distances are booked, times the root of their
// number: level-online.net, "Line and area levelling", example 2, has 10 or 15 mm from German books
// on construction. A job may have its own.
struct Allowance {
  double perSetUp = 0.005;
  double perKilometre = 0.015;
};

// What is known besides the book.
struct BookSettings {
  std::vector<Mark> marks;  // looked up by name
  // Of the marks' 0.000 above ordnance datum: to tell a level that is counted from there.
  std::optional<double> ordnanceDatum;
  std::optional<double> start,
      close;             // levels of the first and the last point, in place of all else
  double staff = 5;      // its length
  double agree = 0.003;  // between two levels of one point; common practice, no source
  Allowance allowance;
};

// Names are the same whatever their capitals.
bool sameName(std::string_view a, std::string_view b);

// The level of a booking's point that is known beforehand: by the settings, the book, a mark of
// that name, or the book's first point come back to.
std::optional<double> knownLevel(const LevelBook& book, size_t row, const BookSettings& settings);

// Some books have a change point in two rows, foresight above backsight: makes one row of them.
void joinChangePoints(LevelBook& book);

}  // namespace model
