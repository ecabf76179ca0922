// The levelling instrument or laser where it stands: the level of its line, and what is read on the
// staff from there. Whether anything stands in the way of the sight is not looked at.
#pragma once

#include <optional>
#include <string>

namespace model {

// One standing of the instrument.
struct Instrument {
  double collimation = 0;  // level of its line: height of collimation, metres above the datum
  double staff = 5;        // length of the staff
};

// From a mark of known level and the backsight read on it.
Instrument setUpInstrument(double markLevel, double backsight, double staff = 5);

enum class Reach {
  Upright,        // on the staff as usual
  UpsideDown,     // above the line: the staff hangs from the point; the reading is negative
  StaffTooShort,  // further below the line than the staff is long
  TooHigh,        // further above it
  LineInGround,   // the ground where the staff would stand is higher than the line
};

struct StaffReading {
  // Line less level, whether it can be read or not: a bigger reading is a lower point.
  double reading = 0;
  Reach reach = Reach::Upright;
  bool canBeRead() const { return reach == Reach::Upright || reach == Reach::UpsideDown; }
};

// `ground`, when given, is the level of the open ground at the point; where it is over the line,
// nothing is read there.
StaffReading readStaff(const Instrument& instrument, double level,
                       std::optional<double> ground = std::nullopt);

// The level of the point that was read.
double levelRead(const Instrument& instrument, double reading);

// "read 2.410", "staff upside down -0.665, or measure up 665 from the line", "4.510: the staff is
// 510 too short; ...".
std::string staffReadingText(const Instrument& instrument, const StaffReading& sight);

// The legs of a tripod: how high its line is over the ground on which it stands. Common practice,
// no source.
struct Tripod {
  double least = 0.900;
  double usual = 1.400;
  double most = 1.700;
};

// What is wrong with an instrument over this ground, or what else it stands on, in words ("the line
// runs 200 below the ground where the instrument stands"); nothing when it can stand so.
std::optional<std::string> standingFault(const Instrument& instrument, double ground,
                                         const Tripod& tripod = {},
                                         const std::string& on = "the ground");

}  // namespace model
