#include "model/job/stair_flight.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/job/job_names.h"

namespace model {
namespace {

constexpr double kTolerance = 1e-6;

Polygon anticlockwise(Polygon polygon) {
  if (signedArea(polygon) < 0) std::reverse(polygon.begin(), polygon.end());
  return polygon;
}

// The index of the storey that a stair starts from; as many as there are for none.
size_t storeyNamed(const Job& job, const std::string& name) {
  if (name.empty()) return 0;
  const auto named = [&](const Storey& storey) { return storey.name == name; };
  return static_cast<size_t>(std::find_if(job.storeys.begin(), job.storeys.end(), named) -
                             job.storeys.begin());
}

void levelsOf(const Job& job, StairFlight& flight) {
  const GroundFloor& ground = job.groundFloor;
  const double structuralGround = job.storeys[0].floor - ground.screed - ground.insulation;
  flight.toFloor = job.storeys[flight.to].floor;
  if (flight.fromCellar) {
    flight.fromFloor = flight.stands = job.cellar->floor;
    flight.lands = flight.toFloor;
    flight.floorUnderside = flight.ceiling = structuralGround - ground.slab;
    return;
  }
  const UpperFloor& upper = job.upperFloor;
  flight.fromFloor = job.storeys[flight.from].floor;
  flight.stands = flight.from == 0 ? flight.fromFloor : flight.fromFloor - upper.finish;
  flight.lands = flight.toFloor - upper.finish;
  flight.floorUnderside = flight.lands - upper.deck - upper.joistDepth;
  flight.ceiling = flight.floorUnderside - upper.ceiling;
}

// Back from the top to where somebody's head still has room under the ceiling; in tens of
// millimetres, and never past the newels at the foot.
double wellFor(const StairFlight& flight) {
  const double last =
      (flight.ceiling - kHeadroom - flight.fromFloor - flight.rise) / flight.slope() - kNosing;
  const double length = flight.wellTo - std::max(last, flight.front());
  return std::min(std::ceil(length * 100 - 1e-6) / 100, flight.wellTo - flight.front());
}

// Along q = side * half() over a length of s: a wall at most `gap` away, or room of `clear`.
Beside beside(const StairFlight& flight, int side, const Vec2& length, const Polygon& room,
              double gap, double clear) {
  constexpr double kSliver = 1e-4;  // square metres
  constexpr double kWall = 0.2;     // at least as thick
  const auto strip = [&](double from, double to) {
    const double a = side * (flight.half() + from), b = side * (flight.half() + to);
    return Regions{{flight.rectangle(length.x, length.y, std::min(a, b), std::max(a, b)), {}}};
  };
  const Regions inside{{room, {}}};
  if (area(subtract(strip(0, clear), inside)) < kSliver) return Beside::Room;
  if (area(intersect(strip(gap, gap + kWall), inside)) < kSliver) return Beside::Wall;
  return Beside::Neither;
}

}  // namespace

Polygon StairFlight::rectangle(double s0, double s1, double q0, double q1) const {
  return {at(s0, q0), at(s1, q0), at(s1, q1), at(s0, q1)};
}

std::optional<Vec2> wayAlongWall(const Outline& outline, const std::string& letters) {
  const auto wall = wallNamed(letters, outline.size());
  if (!wall) return std::nullopt;
  const Vec2 a = outline[*wall], b = outline[(*wall + 1) % outline.size()];
  if (glm::distance(a, b) < kTolerance) return std::nullopt;
  const Vec2 way = glm::normalize(b - a);
  return letters == nameOfWall(*wall, outline.size()) ? way : -way;
}

std::optional<StairFlight> stairFlight(const Job& job, size_t index) {
  const Stair& stair = job.stairs[index];
  const auto way = wayAlongWall(job.outline, stair.up);
  if (!way || stair.risers < 2 || stair.going <= 0) return std::nullopt;
  StairFlight flight;
  flight.jobIndex = index;
  flight.name = stair.name;
  flight.from = storeyNamed(job, stair.from);
  flight.fromCellar = flight.from >= job.storeys.size() && job.cellar && stair.from == kCellarFloor;
  flight.to = flight.fromCellar ? 0 : flight.from + 1;
  if (flight.to >= job.storeys.size()) return std::nullopt;
  flight.foot = stair.foot;
  flight.along = *way;
  flight.left = {-way->y, way->x};
  flight.risers = stair.risers;
  flight.going = stair.going;
  flight.width = stair.width;
  flight.guard = stair.guard;
  levelsOf(job, flight);
  flight.rise = (flight.toFloor - flight.fromFloor) / flight.risers;
  if (flight.rise <= 0) return std::nullopt;
  flight.wellTo = flight.run() + kRiserThick;
  flight.wellFrom = flight.wellTo - stair.well.value_or(wellFor(flight));
  return flight;
}

double trimmingThick(const Job& job, const StairFlight& flight) {
  const bool doubled = job.stairs[flight.jobIndex].trimming == TrimmingKind::Double;
  return flight.inTimber() ? job.upperFloor.joistWidth * (doubled ? 2 : 1) : 0;
}

Polygon roomOver(const Job& job, const Polygon& outline) {
  return offsetMitred(anticlockwise(outline), job.walls.total());
}

Polygon roomUnder(const Job& job, const StairFlight& flight, const Polygon& outline) {
  if (!flight.fromCellar) return roomOver(job, outline);
  const Polygon cellar = job.cellar->outline.empty() ? outline : job.cellar->outline;
  return offsetMitred(anticlockwise(cellar), job.cellar->wall);
}

double clearBesideWell(const Job& job, const StairFlight& flight) {
  constexpr double kSpare = 0.010;
  return std::max(kBesideGuard, trimmingThick(job, flight) + kSpare);
}

Beside besideFlight(const StairFlight& flight, int side, const Polygon& room) {
  return beside(flight, side, {flight.front(), flight.run()}, room, kAtWall, kBesideGuard);
}

Beside besideWell(const Job& job, const StairFlight& flight, int side, const Polygon& room) {
  // Concrete needs no joist beside the well, and nobody falls through less than guarding takes.
  const double gap = flight.inTimber() ? kAtWall : kBesideGuard - 1e-3;
  return beside(flight, side, {flight.wellFrom - kNewel, flight.wellTo + kNewel}, room, gap,
                clearBesideWell(job, flight));
}

}  // namespace model
