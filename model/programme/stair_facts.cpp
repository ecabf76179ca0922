// What is said of a stair, and of the well in the floor over it.
#include "model/decimal_text.h"
#include "model/level_text.h"
#include "model/programme/fact_text.h"

namespace model {
namespace {

const StairFlight* stairTo(const SettingOut& out, int storey) {
  for (const StairFlight& flight : out.stairs)
    if (static_cast<int>(flight.to) == storey) return &flight;
  return nullptr;
}

std::string wellText(const StairFlight& flight) {
  return lengthText(flight.wellTo - flight.wellFrom) + " x " + lengthText(2 * flight.half());
}

// Of the stage that makes the floor the well is in.
std::string floorFact(const std::string& name, const StairFlight* flight, const Job& job) {
  if (!flight) return "";
  const Stair& stair = job.stairs[flight->jobIndex];
  if (name == "trimmed")
    return std::string(", trim them round the stairwell, ") + wellText(*flight) +
           (stair.trimming == TrimmingKind::Double ? ", with double timbers," : "");
  if (name == "boarded") return " Board the well over at once.";
  if (name == "well-closed") return ", its stairwell boarded over";
  return ". It leaves a hole of " + wellText(*flight) +
         " for the stair, trimmed as its maker has drawn it";
}

}  // namespace

std::optional<std::string> stairFact(const std::string& name, const StageKey& key, const Job& job,
                                     const SettingOut& out) {
  for (const char* floor : {"trimmed", "boarded", "well-closed", "hole-for-stair"})
    if (name == floor) return floorFact(name, stairTo(out, key.storey), job);
  if (!name.starts_with("stair")) return std::nullopt;
  const StairFlight* flight = stairTo(out, key.storey);
  if (!flight) return std::string("the stair");
  const Stair& stair = job.stairs[flight->jobIndex];
  if (name == "stair")
    return (flight->name.empty() ? "the stair" : flight->name) + ", " +
           std::to_string(flight->risers) + " risers of " + decimalText(flight->rise * 1000, 1) +
           ", going " + lengthText(flight->going) + ", " + lengthText(flight->width) + " clear";
  if (name == "stair-steps")
    return stair.riserKind == RiserKind::Open ? "treads with their bars" : "treads and risers";
  if (name == "stair-guard") return lengthText(flight->guard);
  if (name == "stair-levels")
    return levelText(flight->fromFloor) + " to " + levelText(flight->toFloor);
  return std::nullopt;
}

}  // namespace model
