#include "model/levelling/instrument.h"

#include <cmath>

#include "model/level_text.h"
#include "model/levelling/staff_text.h"

namespace model {
namespace {

constexpr double kDust = 1e-9;  // of sums of doubles

}  // namespace

Instrument setUpInstrument(double markLevel, double backsight, double staff) {
  return {markLevel + backsight, staff};
}

StaffReading readStaff(const Instrument& instrument, double level, std::optional<double> ground) {
  StaffReading sight;
  sight.reading = instrument.collimation - level;
  if (ground && *ground > instrument.collimation + kDust) {
    sight.reach = Reach::LineInGround;
  } else if (sight.reading > instrument.staff + kDust) {
    sight.reach = Reach::StaffTooShort;
  } else if (sight.reading < -instrument.staff - kDust) {
    sight.reach = Reach::TooHigh;
  } else if (sight.reading < -kDust) {
    sight.reach = Reach::UpsideDown;
  }
  return sight;
}

double levelRead(const Instrument& instrument, double reading) {
  return instrument.collimation - reading;
}

std::string staffReadingText(const Instrument& instrument, const StaffReading& sight) {
  const std::string reading = staffText(sight.reading);
  switch (sight.reach) {
    case Reach::Upright:
      return "read " + reading;
    case Reach::UpsideDown:
      return "above the line: staff upside down " + reading + ", or measure up " +
             lengthText(-sight.reading) + " from the line";
    case Reach::StaffTooShort:
      return reading + " is past the staff by " + lengthText(sight.reading - instrument.staff) +
             ": carry the level down over a change point or with a tape";
    case Reach::TooHigh:
      return lengthText(-sight.reading) +
             " above the line, past the staff: carry the level up with a tape";
    case Reach::LineInGround:
      return "the line is below the ground there: set up higher or further on";
  }
  return {};
}

std::optional<std::string> standingFault(const Instrument& instrument, double ground,
                                         const Tripod& tripod, const std::string& on) {
  const double height = instrument.collimation - ground;
  if (height < -kDust) {
    return "the line runs " + lengthText(-height) + " below " + on + " where the instrument stands";
  }
  if (height < tripod.least - kDust) {
    return "the line is only " + lengthText(height) + " above " + on +
           "; a tripod stands at least " + lengthText(tripod.least) + " high";
  }
  if (height > tripod.most + kDust) {
    return "the line is " + lengthText(height) + " above " + on + "; a tripod reaches " +
           lengthText(tripod.most);
  }
  return std::nullopt;
}

}  // namespace model
