// Stairs against the published limits for a private stair.
#include <cmath>
#include <cstdio>
#include <numbers>

#include "model/checks/parts.h"
#include "model/job/stair_flight.h"
#include "model/job/value_words.h"

namespace model {
namespace {

// Approved Document K (England), 2013 edition: table 1.1 with its notes, private stair. Source:
// ADK.
constexpr double kRiseLeast = 0.150, kRiseMost = 0.220;
constexpr double kGoingLeast = 0.220, kGoingMost = 0.300;
constexpr double kPitchMost = 42;  // degrees
constexpr double kStrideLeast = 0.550, kStrideMost = 0.700;
// The same, diagram 3.1, single family dwellings.
constexpr double kGuardLeast = 0.900;
constexpr double kTolerance = 1e-4;

// To a tenth of a millimetre.
double toTenth(double metres) { return std::round(metres * 1e4) / 1e4; }

bool outside(double value, double least, double most) {
  return value < least - kTolerance || value > most + kTolerance;
}

// "rise 230 mm (150 mm to 220 mm)"
std::string off(const char* what, double value, double least, double most) {
  return std::string(what) + " " + lengthWords(toTenth(value)) + " (" + lengthWords(least) +
         " to " + lengthWords(most) + ")";
}

std::vector<std::string> steepness(const StairFlight& flight) {
  std::vector<std::string> found;
  const double stride = 2 * flight.rise + flight.going;
  const double pitch = std::atan2(flight.rise, flight.going) * 180 / std::numbers::pi;
  if (outside(flight.rise, kRiseLeast, kRiseMost))
    found.push_back(off("rise", flight.rise, kRiseLeast, kRiseMost));
  if (outside(flight.going, kGoingLeast, kGoingMost))
    found.push_back(off("going", flight.going, kGoingLeast, kGoingMost));
  if (pitch > kPitchMost + kTolerance) {
    char text[64];
    std::snprintf(text, sizeof text, "pitch %.1f degrees (at most %.0f)", pitch, kPitchMost);
    found.emplace_back(text);
  }
  if (outside(stride, kStrideLeast, kStrideMost))
    found.push_back(off("twice the rise and the going", stride, kStrideLeast, kStrideMost));
  return found;
}

bool roomFor(const Polygon& figure, const Polygon& room) {
  return area(subtract({{figure, {}}}, {{room, {}}})) < 1e-4;
}

void addRoom(const Checking& check, const StairFlight& flight, std::vector<std::string>& found) {
  const Polygon& outline = check.settingOut.outline;
  const double half = flight.half(), length = flight.width;
  const auto at = [&](double from, double to) { return flight.rectangle(from, to, -half, half); };
  const std::string least =
      " (a landing as long as the stair is wide, " + lengthWords(length) + ")";
  if (!roomFor(at(-length, 0), roomUnder(check.job, flight, outline)))
    found.push_back("too little room before its foot" + least);
  const double top = flight.wellTo;
  if (!roomFor(at(top, top + length), roomOver(check.job, outline)))
    found.push_back("too little room at its top" + least);
}

}  // namespace

// One line for each stair.
void checkStairs(const Checking& check) {
  for (const StairFlight& flight : check.settingOut.stairs) {
    std::vector<std::string> found = steepness(flight);
    if (flight.headroom() < kHeadroom - kTolerance && flight.wellFrom > flight.front())
      found.push_back("headroom at the edge of the well " +
                      lengthWords(toTenth(flight.headroom())) + " (at least " +
                      lengthWords(kHeadroom) + ")");
    if (flight.guard < kGuardLeast - kTolerance)
      found.push_back("guarding " + lengthWords(flight.guard) + " (at least " +
                      lengthWords(kGuardLeast) + ")");
    addRoom(check, flight, found);
    if (found.empty()) continue;
    const std::string who = flight.name.empty() ? "stair " + std::to_string(flight.jobIndex + 1)
                                                : "stair \"" + flight.name + "\"";
    check.warning("stair[" + std::to_string(flight.jobIndex) + "]", who + ": " + listedApart(found),
                  "the limits are those of Approved Document K (England) for a private stair; "
                  "other places have their own: local rules and the designer decide");
  }
}

}  // namespace model
