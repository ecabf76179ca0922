// On which side of a line a point lies, decided without rounding.
#pragma once

#include "model/vec.h"

namespace model {

// +1 when a, b, c turn left (anticlockwise), -1 when they turn right, 0 when they are in line.
// Exact for every finite input that does not overflow: walls in line are the normal case, so "in
// line" must not depend on rounding.
int orientation(const Vec2& a, const Vec2& b, const Vec2& c);

// True when p lies on the segment a-b, ends included. Exact.
bool onSegment(const Vec2& a, const Vec2& b, const Vec2& p);

// True when the closed segments a-b and c-d have a point in common. Exact.
bool segmentsMeet(const Vec2& a, const Vec2& b, const Vec2& c, const Vec2& d);

}  // namespace model
