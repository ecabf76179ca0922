#include "model/levelling/cut_fill.h"

#include <cmath>

#include "model/level_text.h"

namespace model {

CutFill cutFill(double found, double wanted, double onWithin) {
  const double high = found - wanted;
  // Levels of the model are exact to the millimetre, their differences only to the last bits.
  if (std::abs(high) <= onWithin + 1e-9) return {CutFillWord::On, std::abs(high)};
  return {high > 0 ? CutFillWord::Cut : CutFillWord::Fill, std::abs(high)};
}

CutFill cutFillByStaff(double reading, double wantedReading, double onWithin) {
  return cutFill(-reading, -wantedReading, onWithin);
}

std::string cutFillText(const CutFill& difference) {
  const std::string amount = lengthText(difference.amount);
  if (difference.word == CutFillWord::On || amount == "0") return "on";
  return (difference.word == CutFillWord::Cut ? "cut " : "fill ") + amount;
}

}  // namespace model
