// An upright rectangle of the window, in pixels, x right and y down.
#pragma once

#include <glm/vec2.hpp>

namespace viewer {

struct Box {
  float left = 0, top = 0, right = 0, bottom = 0;

  float width() const { return right - left; }
  float height() const { return bottom - top; }
  glm::vec2 centre() const { return {(left + right) / 2, (top + bottom) / 2}; }
  bool contains(const glm::vec2& p) const {
    return p.x >= left && p.x <= right && p.y >= top && p.y <= bottom;
  }
  bool operator==(const Box&) const = default;
  // Boxes that only touch do not overlap.
  bool overlaps(const Box& o) const {
    return left < o.right && o.left < right && top < o.bottom && o.top < bottom;
  }
  bool inside(const Box& o) const {
    return left >= o.left && right <= o.right && top >= o.top && bottom <= o.bottom;
  }
  Box grown(float by) const { return {left - by, top - by, right + by, bottom + by}; }
  static Box at(const glm::vec2& corner, const glm::vec2& size) {
    return {corner.x, corner.y, corner.x + size.x, corner.y + size.y};
  }
};

}  // namespace viewer
