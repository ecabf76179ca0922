#include "viewer/card_place.h"

#include <algorithm>
#include <optional>

#include <glm/geometric.hpp>

namespace viewer {
namespace {

bool holds(const SeenTriangle& t, const glm::vec2& p) {
  const auto side = [&](const glm::vec2& a, const glm::vec2& b) {
    return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
  };
  const float s[3] = {side(t[0], t[1]), side(t[1], t[2]), side(t[2], t[0])};
  return (s[0] >= 0 && s[1] >= 0 && s[2] >= 0) || (s[0] <= 0 && s[1] <= 0 && s[2] <= 0);
}

// How many points of a grid inside the box lie on the thing.
int pointsCovered(const Box& box, const std::vector<SeenTriangle>& thing) {
  constexpr int kSteps = 10;
  int count = 0;
  for (int i = 0; i < kSteps * kSteps; ++i) {
    const int column = i % kSteps, row = i / kSteps;
    const glm::vec2 p{box.left + box.width() * (float(column) + 0.5f) / kSteps,
                      box.top + box.height() * (float(row) + 0.5f) / kSteps};
    count += std::any_of(thing.begin(), thing.end(), [&](const auto& t) { return holds(t, p); });
  }
  return count;
}

}  // namespace

std::vector<SeenTriangle> seenTriangles(const Scene& scene, const Frame& frame, const Box& sheet,
                                        std::uint32_t element) {
  std::vector<SeenTriangle> seen;
  const ElementRange& range = scene.elements[element];
  const double aspect = double(sheet.width() / sheet.height());
  for (std::uint32_t i = range.firstIndex; i + 2 < range.firstIndex + range.indexCount; i += 3) {
    SeenTriangle triangle;
    bool whole = true;
    for (std::uint32_t k = 0; k < 3 && whole; ++k) {
      const auto at = frame.camera.project(scene.vertices[scene.indices[i + k]].position, aspect);
      whole = at.has_value();
      if (at) triangle[k] = {at->x * sheet.width(), at->y * sheet.height()};
    }
    if (whole) seen.push_back(triangle);
  }
  return seen;
}

bool covers(const Box& box, const SeenTriangle& t) {
  // Apart when a side of the box or of the triangle parts them.
  const glm::vec2 corners[4] = {
      {box.left, box.top}, {box.right, box.top}, {box.right, box.bottom}, {box.left, box.bottom}};
  const auto parts = [&](const glm::vec2& axis) {
    float boxLow = 1e30f, boxHigh = -1e30f, low = 1e30f, high = -1e30f;
    for (const glm::vec2& c : corners) {
      boxLow = std::min(boxLow, glm::dot(c, axis));
      boxHigh = std::max(boxHigh, glm::dot(c, axis));
    }
    for (const glm::vec2& p : t) {
      low = std::min(low, glm::dot(p, axis));
      high = std::max(high, glm::dot(p, axis));
    }
    return high < boxLow || low > boxHigh;
  };
  if (parts({1, 0}) || parts({0, 1})) return false;
  for (int i = 0; i < 3; ++i) {
    const glm::vec2 side = t[size_t(i + 1) % 3] - t[size_t(i)];
    if (parts({-side.y, side.x})) return false;
  }
  return true;
}

Box cardPlace(const glm::vec2& size, const Box& room, const std::vector<SeenTriangle>& thing) {
  const float left = room.left, right = std::max(left, room.right - size.x);
  const float top = room.top, bottom = std::max(top, room.bottom - size.y);
  const float across = (left + right) / 2, half = (top + bottom) / 2;
  const glm::vec2 places[] = {{right, bottom}, {left, bottom}, {right, top},     {left, top},
                              {right, half},   {left, half},   {across, bottom}, {across, top}};
  std::optional<Box> best;
  int least = 0;
  for (const glm::vec2& place : places) {
    const Box box = Box::at(place, size);
    if (std::none_of(thing.begin(), thing.end(), [&](const auto& t) { return covers(box, t); }))
      return box;
    const int covered = pointsCovered(box, thing);
    if (best && covered >= least) continue;
    best = box;
    least = covered;
  }
  return *best;
}

}  // namespace viewer
