#include "model/works/stair_well.h"

namespace model {

Polygon wellCut(const Job& job, const SettingOut& settingOut, const StairFlight& flight) {
  const Polygon over = roomOver(job, settingOut.outline);
  const auto edge = [&](int side) {
    const bool atWall = flight.inTimber() && besideWell(job, flight, side, over) == Beside::Wall;
    return side * (flight.half() + (atWall ? kAtWall + 0.001 : 0));
  };
  return flight.rectangle(flight.wellFrom, flight.wellTo, edge(-1), edge(1));
}

std::vector<const StairFlight*> flightsTo(const SettingOut& settingOut, size_t storey) {
  std::vector<const StairFlight*> flights;
  for (const StairFlight& flight : settingOut.stairs)
    if (flight.to == storey) flights.push_back(&flight);
  return flights;
}

}  // namespace model
