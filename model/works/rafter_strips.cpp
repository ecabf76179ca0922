// Rafters on plan.
#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/works/roof_frame.h"

namespace model {
namespace {

// What is left of a ring on one side of a level line across it: where `side` * (x - at) >= 0.
Polygon cut(const Polygon& ring, double at, double side) {
  Polygon kept;
  for (size_t i = 0, n = ring.size(); i < n; ++i) {
    const Vec2 &a = ring[i], &b = ring[(i + 1) % n];
    const double da = side * (a.x - at), db = side * (b.x - at);
    if (da >= 0) kept.push_back(a);
    if ((da > 0 && db < 0) || (da < 0 && db > 0))
      kept.emplace_back(at, a.y + (b.y - a.y) * (da / (da - db)));
  }
  return kept;
}

Polygon withoutDoubles(const Polygon& ring) {
  Polygon kept;
  for (const Vec2& p : ring)
    if (kept.empty() || glm::length(p - kept.back()) > 1e-6) kept.push_back(p);
  while (kept.size() > 1 && glm::length(kept.front() - kept.back()) <= 1e-6) kept.pop_back();
  return kept;
}

// The slope seen from its eaves: x along them, y up.
struct Slope {
  Vec2 from{0, 0}, along{1, 0}, up{0, 1};

  Vec2 in(const Vec2& p) const { return {glm::dot(p - from, along), glm::dot(p - from, up)}; }
  Vec2 out(const Vec2& q) const { return from + along * q.x + up * q.y; }
};

Polygon mapped(const Polygon& ring, const Slope& slope, Vec2 (Slope::*way)(const Vec2&) const) {
  Polygon result;
  for (const Vec2& p : ring) result.push_back((slope.*way)(p));
  return result;
}

std::array<double, 2> reach(const Polygon& ring) {
  const auto [low, high] = std::minmax_element(
      ring.begin(), ring.end(), [](const Vec2& a, const Vec2& b) { return a.x < b.x; });
  return {low->x, high->x};
}

// Centre lines: one close beside each verge that runs straight up the slope, then the grid, clear
// of those.
std::vector<double> centres(const Job& job, const SettingOut& settingOut, const RoofFace& face,
                            const Slope& slope, const Polygon& ring) {
  const double half = job.roof.rafterWidth / 2, spacing = job.roof.spacing;
  std::vector<double> places;
  for (const RoofLine& line : settingOut.roof.lines) {
    if (line.kind != RoofLineKind::Verge || line.faceA != face.edge) continue;
    const Vec2 a = slope.in(line.a), b = slope.in(line.b);
    if (std::abs(a.x - b.x) > 1e-6) continue;
    const bool onRight = contains(ring, Vec2{a.x - half, (a.y + b.y) / 2}, 0);
    places.push_back(onRight ? a.x - half : a.x + half);
  }
  const auto [low, high] = reach(ring);
  const double origin = slope.in(settingOut.outline[0]).x;
  const size_t verges = places.size();
  for (double k = std::ceil((low - origin) / spacing); origin + k * spacing < high; ++k) {
    const double x = origin + k * spacing;
    bool clear = x - half >= low - 1e-9 && x + half <= high + 1e-9;
    for (size_t v = 0; v < verges; ++v) clear = clear && std::abs(places[v] - x) >= 2 * half;
    if (clear) places.push_back(x);
  }
  std::sort(places.begin(), places.end());
  places.erase(std::unique(places.begin(), places.end(),
                           [&](double a, double b) { return b - a < 2 * half; }),
               places.end());
  return places;
}

}  // namespace

std::vector<Polygon> rafterStrips(const Job& job, const SettingOut& settingOut, size_t face,
                                  const Polygon& clear) {
  const RoofFace& roofFace = settingOut.roof.faces[face];
  const WallLine& wall = settingOut.walls[roofFace.edge];
  const Slope slope{settingOut.eavesOutline[wall.from], wall.along, -wall.outward};
  const Polygon ring = mapped(clear, slope, &Slope::in);
  const double width = job.roof.rafterWidth;
  std::vector<Polygon> strips;
  for (const double x : centres(job, settingOut, roofFace, slope, ring)) {
    const Polygon strip = withoutDoubles(cut(cut(ring, x - width / 2, 1), x + width / 2, -1));
    // Scraps in the corners of hips are not rafters. A strip that is not one plain ring comes from
    // a slope that the line across it meets more than once; there are none at one pitch.
    if (signedArea(strip) < 3 * width * width || crossingEdges(strip)) continue;
    strips.push_back(mapped(strip, slope, &Slope::out));
  }
  return strips;
}

}  // namespace model
