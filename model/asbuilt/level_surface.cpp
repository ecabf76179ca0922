#include "model/asbuilt/level_surface.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/geometry/polygon.h"

namespace model {

namespace {

constexpr double kSamePlace = 0.001;
constexpr double kMostCells = 100000;

void put(LevelSurface& surface, const Vec2& at, double off) {
  for (size_t i = 0; i < surface.points.size(); ++i) {
    if (glm::distance(surface.points[i], at) > kSamePlace) continue;
    surface.off[i] = off;
    return;
  }
  surface.points.push_back(at);
  surface.off.push_back(off);
}

}  // namespace

std::optional<double> LevelSurface::at(const Vec2& p) const {
  for (const auto& triangle : triangles) {
    const Vec2 &a = points[triangle[0]], &b = points[triangle[1]], &c = points[triangle[2]];
    const double area = cross(b - a, c - a);
    const double wa = cross(b - p, c - p) / area, wb = cross(c - p, a - p) / area;
    const double wc = 1 - wa - wb;
    if (std::min({wa, wb, wc}) < -1e-9) continue;
    return wa * off[triangle[0]] + wb * off[triangle[1]] + wc * off[triangle[2]];
  }
  return std::nullopt;
}

LevelSurface levelSurface(const std::vector<Deviation>& deviations, const std::string& target,
                          std::optional<size_t> set) {
  LevelSurface surface;
  for (const Deviation& d : deviations) {
    if (d.kind != ReadingKind::Level || d.target != target) continue;
    if (set ? d.set == *set : d.latest) put(surface, d.place.at, d.off);
  }
  if (surface.points.size() >= 3) surface.triangles = delaunay(surface.points);
  return surface;
}

LevelGrid gridOf(const LevelSurface& surface, double cell) {
  LevelGrid grid;
  if (surface.triangles.empty() || !(cell > 0)) return grid;
  Vec2 low = surface.points[0], high = low;
  for (const Vec2& p : surface.points) {
    low = {std::min(low.x, p.x), std::min(low.y, p.y)};
    high = {std::max(high.x, p.x), std::max(high.y, p.y)};
  }
  const Vec2 size = high - low;
  grid.cell = std::max(
      {cell, std::sqrt(size.x * size.y / kMostCells), std::max(size.x, size.y) / kMostCells});
  grid.low = low;
  grid.columns = static_cast<size_t>(std::max(1.0, std::ceil(size.x / grid.cell)));
  grid.rows = static_cast<size_t>(std::max(1.0, std::ceil(size.y / grid.cell)));
  for (size_t row = 0; row < grid.rows; ++row) {
    for (size_t column = 0; column < grid.columns; ++column)
      grid.off.push_back(surface.at(grid.middle(column, row)));
  }
  return grid;
}

}  // namespace model
