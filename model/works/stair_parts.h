// Solids in a stair's own coordinates.
#pragma once

#include "model/geometry/solid.h"
#include "model/job/stair_flight.h"

namespace model {

// A convex figure seen from the right of the flight, x = s, y = z, anticlockwise.
using SideFigure = std::vector<Vec2>;

// The part of a figure where x * n.x + y * n.y <= limit.
SideFigure cutFigure(const SideFigure& figure, const Vec2& n, double limit);

// The figure drawn out across the flight from q0 to q1; empty when it has no area.
Solid drawnAcross(const StairFlight& flight, const SideFigure& figure, double q0, double q1);

// A block with level top and bottom.
Solid stairBlock(const StairFlight& flight, const Vec2& s, const Vec2& q, const Vec2& z);

// The middles of balusters between two ends, with at most kBalusterGap clear between any two and
// beside the ends.
inline constexpr double kBaluster = 0.032;  // square: common practice, no source
// Approved Document K (England), 2013 edition, 3.3: no sphere of 100 mm goes through. Source: ADK.
inline constexpr double kBalusterGap = 0.099;
std::vector<double> balustersBetween(double from, double to);

}  // namespace model
