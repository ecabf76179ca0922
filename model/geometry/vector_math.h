// The vector operations that the geometry uses, in one place.
#pragma once

#include <cmath>

#include "model/vec.h"

namespace model {

inline double dot(const Vec2& a, const Vec2& b) { return a.x * b.x + a.y * b.y; }
inline double dot(const Vec3& a, const Vec3& b) { return a.x * b.x + a.y * b.y + a.z * b.z; }

inline Vec3 cross(const Vec3& a, const Vec3& b) {
  return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}

inline double length(const Vec2& a) { return std::hypot(a.x, a.y); }
inline double length(const Vec3& a) { return std::sqrt(dot(a, a)); }

}  // namespace model
