#include "model/geometry/orientation.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace model {
namespace {

int signOf(double v) { return (v > 0) - (v < 0); }

// A sum of doubles kept as non-overlapping parts, smallest first, so that nothing is lost.
class ExactSum {
 public:
  void add(double value) {
    double carry = value;
    for (size_t i = 0; i < count_; ++i) {
      const double part = parts_[i];
      const double sum = carry + part;
      const double virtualPart = sum - carry;
      parts_[i] = (carry - (sum - virtualPart)) + (part - virtualPart);
      carry = sum;
    }
    parts_[count_++] = carry;
  }
  void addProduct(double a, double b) {
    const double high = a * b;
    add(std::fma(a, b, -high));
    add(high);
  }
  // The largest part that is not zero decides.
  int sign() const {
    for (size_t i = count_; i-- > 0;)
      if (parts_[i] != 0) return signOf(parts_[i]);
    return 0;
  }

 private:
  std::array<double, 12> parts_{};
  size_t count_ = 0;
};

int exactOrientation(const Vec2& a, const Vec2& b, const Vec2& c) {
  ExactSum sum;
  sum.addProduct(a.x, b.y);
  sum.addProduct(-a.x, c.y);
  sum.addProduct(-c.x, b.y);
  sum.addProduct(-a.y, b.x);
  sum.addProduct(a.y, c.x);
  sum.addProduct(c.y, b.x);
  return sum.sign();
}

}  // namespace

int orientation(const Vec2& a, const Vec2& b, const Vec2& c) {
  const double left = (a.x - c.x) * (b.y - c.y);
  const double right = (a.y - c.y) * (b.x - c.x);
  const double det = left - right;
  // Bound of the rounding error of `det`, from J. R. Shewchuk, "Adaptive Precision Floating-Point
  // Arithmetic and Fast Robust Geometric Predicates", 1997, section 4.2 (ccwerrboundA).
  constexpr double kBound = 3.3306690738754716e-16;
  if (std::abs(det) > kBound * (std::abs(left) + std::abs(right))) return signOf(det);
  if (left == 0 && right == 0 && (a.x == c.x || b.y == c.y) && (a.y == c.y || b.x == c.x)) return 0;
  return exactOrientation(a, b, c);
}

bool onSegment(const Vec2& a, const Vec2& b, const Vec2& p) {
  return p.x >= std::min(a.x, b.x) && p.x <= std::max(a.x, b.x) && p.y >= std::min(a.y, b.y) &&
         p.y <= std::max(a.y, b.y) && orientation(a, b, p) == 0;
}

bool segmentsMeet(const Vec2& a, const Vec2& b, const Vec2& c, const Vec2& d) {
  if (std::max(a.x, b.x) < std::min(c.x, d.x) || std::max(c.x, d.x) < std::min(a.x, b.x) ||
      std::max(a.y, b.y) < std::min(c.y, d.y) || std::max(c.y, d.y) < std::min(a.y, b.y))
    return false;
  return orientation(a, b, c) * orientation(a, b, d) <= 0 &&
         orientation(c, d, a) * orientation(c, d, b) <= 0;
}

}  // namespace model
