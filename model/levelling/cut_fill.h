// A level found against the level wanted, as it is said on site: "cut 25", "fill 15", "on".
#pragma once

#include <string>

namespace model {

enum class CutFillWord {
  On,
  Cut,   // it stands too high
  Fill,  // it stands too low
};

struct CutFill {
  CutFillWord word = CutFillWord::On;
  double amount = 0;  // metres, never negative; kept for On too
};

// How near is "on"; common practice, no source.
inline constexpr double kOnWithin = 0.002;

CutFill cutFill(double found, double wanted, double onWithin = kOnWithin);

// The same from the staff: the reading taken and the reading that the wanted level has. A bigger
// reading is a lower point, so a reading that is too big wants filling.
CutFill cutFillByStaff(double reading, double wantedReading, double onWithin = kOnWithin);

// Whole millimetres.
std::string cutFillText(const CutFill& difference);

}  // namespace model
