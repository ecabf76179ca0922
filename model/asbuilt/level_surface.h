// Deviations in level spread over the surface between the readings, for a heat map.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "model/asbuilt/deviation.h"
#include "model/settingout/delaunay.h"

namespace model {

// Plane between any three neighbouring readings (Delaunay), exact at each; nothing outside them.
struct LevelSurface {
  std::vector<Vec2> points;
  std::vector<double> off;  // by point, metres
  Triangles triangles;

  // Nothing outside the readings' hull.
  std::optional<double> at(const Vec2& p) const;
};

// Values at the middles of square cells, row by row from the south-west.
struct LevelGrid {
  Vec2 low{0, 0};  // south-west corner
  double cell = 0;
  size_t columns = 0, rows = 0;
  std::vector<std::optional<double>> off;

  Vec2 middle(size_t column, size_t row) const {
    return low + Vec2{(double(column) + 0.5) * cell, (double(row) + 0.5) * cell};
  }
};

// Of the latest readings of a level, or, with `set`, of that set's. Of two readings of one place
// the later one counts. Fewer than three places, or all in line, make no surface.
LevelSurface levelSurface(const std::vector<Deviation>& deviations, const std::string& target,
                          std::optional<size_t> set = std::nullopt);

// Cells are made bigger than asked where there would be more than 100,000.
LevelGrid gridOf(const LevelSurface& surface, double cell);

}  // namespace model
