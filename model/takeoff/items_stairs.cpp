// Stairs by name, then what they are made of.
#include <string>

#include "model/decimal_text.h"
#include "model/level_text.h"
#include "model/takeoff/items.h"
#include "model/takeoff/unit_rates.h"

namespace model {
namespace {

// Common practice, no source: sawn timber is sold in steps of 300 mm.
constexpr double kTimberStep = 0.3;

std::string itemOf(const StairFlight& flight) {
  return (flight.name.empty() ? "Stair" : flight.name) + ", " + std::to_string(flight.risers) +
         " risers of " + decimalText(flight.rise * 1000, 1) + ", going " +
         lengthText(flight.going) + ", " + lengthText(flight.width) + " clear";
}

struct Timber {
  ElementKind kind;
  const char* item;
  Unit unit;
  const char* basis;
};
constexpr Timber kTimbers[] = {
    {ElementKind::StairString, "Stair strings", Unit::Metre, "along the slope"},
    {ElementKind::StairTread, "Stair treads", Unit::Each, "as drawn, the top nosing apart"},
    {ElementKind::StairTread, "Top nosings of stairs", Unit::Metre, "across the stair"},
    {ElementKind::StairRiser, "Stair risers", Unit::Each, "as drawn"},
    {ElementKind::Newel, "Newels", Unit::Metre, "true lengths"},
    {ElementKind::Handrail, "Handrails", Unit::Metre, "true lengths"},
    {ElementKind::Baluster, "Balusters", Unit::Each, "as drawn"},
};

}  // namespace

void countStairs(const TakeoffInput& in, Tally& tally) {
  for (const StairFlight& flight : in.settingOut.stairs)
    tally.add({itemOf(flight), Unit::Each, 0, 1, "one flight, between finished floors"}, 1,
              {StageKind::Stairs, static_cast<int>(flight.to)});
  for (const Timber& timber : kTimbers) {
    const bool sawn = timber.unit == Unit::Metre;
    for (const Element& e : in.works.elements) {
      if (e.kind != timber.kind || e.quantity.unit != timber.unit) continue;
      tally.add({timber.item, timber.unit, sawn ? waste::kTimber : 0, sawn ? kTimberStep : 1,
                 timber.basis},
                e.quantity.amount, e.placed.stage);
    }
  }
}

}  // namespace model
