#include "model/works/stair_parts.h"

#include <cmath>

#include <glm/geometric.hpp>

namespace model {

SideFigure cutFigure(const SideFigure& figure, const Vec2& n, double limit) {
  SideFigure kept;
  for (size_t i = 0; i < figure.size(); ++i) {
    const Vec2 &a = figure[i], &b = figure[(i + 1) % figure.size()];
    const double da = glm::dot(a, n) - limit, db = glm::dot(b, n) - limit;
    if (da <= 0) kept.push_back(a);
    if ((da < 0 && db > 0) || (da > 0 && db < 0)) kept.push_back(a + (b - a) * (da / (da - db)));
  }
  return kept;
}

Solid drawnAcross(const StairFlight& flight, const SideFigure& figure, double q0, double q1) {
  if (figure.size() < 3 || signedArea(figure) < 1e-9 || q1 - q0 < 1e-9) return {};
  Solid solid;
  const auto n = static_cast<std::uint32_t>(figure.size());
  for (const double q : {q0, q1})
    for (const Vec2& p : figure) solid.points.emplace_back(flight.at(p.x, q), p.y);
  for (std::uint32_t i = 1; i + 1 < n; ++i) {
    solid.triangles.push_back({0, i, i + 1});
    solid.triangles.push_back({n, n + i + 1, n + i});
  }
  for (std::uint32_t i = 0; i < n; ++i) {
    const std::uint32_t j = (i + 1) % n;
    solid.triangles.push_back({i, n + i, n + j});
    solid.triangles.push_back({i, n + j, j});
  }
  return solid;
}

Solid stairBlock(const StairFlight& flight, const Vec2& s, const Vec2& q, const Vec2& z) {
  return drawnAcross(flight, {{s.x, z.x}, {s.y, z.x}, {s.y, z.y}, {s.x, z.y}}, q.x, q.y);
}

std::vector<double> balustersBetween(double from, double to) {
  const double length = to - from;
  const double gaps = std::ceil((length - kBalusterGap) / (kBalusterGap + kBaluster) - 1e-9) + 1;
  std::vector<double> middles;
  if (gaps < 2) return middles;
  const double gap = (length - (gaps - 1) * kBaluster) / gaps;
  for (double k = 1; k < gaps; ++k) middles.push_back(from + k * (gap + kBaluster) - kBaluster / 2);
  return middles;
}

}  // namespace model
