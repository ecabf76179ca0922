// A stair as it lies: one straight flight between two floors and the well over it.
//
// Its own coordinates: s, metres on plan up the flight from the face of the first riser; q, to the
// left of one who climbs, from the middle; z, levels.
#pragma once

#include <optional>
#include <string>

#include "model/geometry/polygon.h"
#include "model/job/job.h"

namespace model {

// Approved Document K (England), 2013 edition, section 1, headroom for stairs. Source: ADK.
inline constexpr double kHeadroom = 2.000;

// Sizes of the joinery, which its maker has: common practice, no source, but for the nosing, which
// lies between the 16 and 25 of ADK, diagram 1.1.
inline constexpr double kTreadThick = 0.025, kRiserThick = 0.012, kNosing = 0.020;
inline constexpr double kStringThick = 0.032, kStringOver = 0.040;  // over the pitch line, square
inline constexpr double kNewel = 0.090, kNewelOver = 0.060;         // over the rail it takes

struct StairFlight {
  size_t jobIndex = 0;  // into Job::stairs
  std::string name;
  bool fromCellar = false;
  size_t from = 0;  // storey; of no meaning from the cellar
  size_t to = 0;    // storey whose floor it lands on
  Vec2 foot{0, 0}, along{1, 0}, left{0, 1};
  int risers = 2;
  double rise = 0, going = 0;              // of one step
  double width = 0;                        // clear between the strings
  double fromFloor = 0, toFloor = 0;       // finished
  double stands = 0, lands = 0;            // levels that its feet, and its top newels, stand on
  double floorUnderside = 0, ceiling = 0;  // of the floor over the flight, and under it
  double wellFrom = 0, wellTo = 0;         // s; at wellTo the floor begins
  double guard = 0.9;

  double half() const { return width / 2 + kStringThick; }  // q of the strings' outer faces
  double run() const { return (risers - 1) * going; }       // to the face of the last riser
  double slope() const { return rise / going; }
  // The level of the line through the nosings.
  double pitchLine(double s) const { return fromFloor + rise + slope() * (s + kNosing); }
  // From the pitch line up to the edge of the well under which one passes.
  double headroom() const { return ceiling - pitchLine(wellFrom); }
  // The s of the front of the newels at the foot.
  double front() const { return -kNosing - kNewel; }
  bool inTimber() const { return to > 0; }  // the floor that its well is in
  Vec2 at(double s, double q) const { return foot + along * s + left * q; }
  // On plan, anticlockwise.
  Polygon rectangle(double s0, double s1, double q0, double q1) const;
  Polygon well() const { return rectangle(wellFrom, wellTo, -half(), half()); }
};

// The direction "C-B" on plan; nothing when there is no wall of that name.
std::optional<Vec2> wayAlongWall(const Outline& outline, const std::string& letters);

// The stair, or nothing while its floors or its direction are none of the job's.
std::optional<StairFlight> stairFlight(const Job& job, size_t index);

// Thickness of what carries the well's edges in a timber floor: one or two joists.
double trimmingThick(const Job& job, const StairFlight& flight);

// Inside the finished walls of the floor that a flight stands on, and of the one it lands on.
Polygon roomUnder(const Job& job, const StairFlight& flight, const Polygon& outline);
Polygon roomOver(const Job& job, const Polygon& outline);

// Common practice, no source.
inline constexpr double kAtWall = 0.060;       // a gap that a cover strip hides
inline constexpr double kBesideGuard = 0.120;  // for newels and rails beside the strings

// What lies along a side of a flight, or of its well, all the way: a wall, room enough for guarding
// and for what carries the floor there, or neither of the two.
enum class Beside { Wall, Room, Neither };
// `side`: 1 left, -1 right; the room is roomUnder() and roomOver().
Beside besideFlight(const StairFlight& flight, int side, const Polygon& room);
Beside besideWell(const Job& job, const StairFlight& flight, int side, const Polygon& room);
// How much room that is.
double clearBesideWell(const Job& job, const StairFlight& flight);

}  // namespace model
