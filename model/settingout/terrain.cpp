#include "model/settingout/terrain.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include <glm/geometric.hpp>

#include "model/settingout/delaunay.h"

namespace model {

namespace {

constexpr double kSamePoint = 1e-6;     // metres
constexpr double kMargin = 8.0;         // of a site without a boundary
constexpr double kLevelGround = -0.15;  // of a site without spot levels

Polygon anticlockwise(Polygon polygon) {
  if (signedArea(polygon) < 0) std::reverse(polygon.begin(), polygon.end());
  return polygon;
}

// A boundary corner's level: the spot level there, or the mean of all, nearer ones counting more.
double levelFromSpots(const std::vector<SpotLevel>& spots, const Vec2& at) {
  if (spots.empty()) return kLevelGround;
  double sum = 0, weights = 0;
  for (const SpotLevel& spot : spots) {
    const Vec2 d = spot.at - at;
    const double square = glm::dot(d, d);
    if (square < kSamePoint * kSamePoint) return spot.level;
    sum += spot.level / square;
    weights += 1 / square;
  }
  return sum / weights;
}

bool holds(const std::vector<Vec2>& points, const Vec2& p) {
  return std::any_of(points.begin(), points.end(),
                     [&](const Vec2& q) { return glm::distance(p, q) < kSamePoint; });
}

Vec2 plan(const Vec3& p) { return {p.x, p.y}; }

// The level on the nearest edge of the triangles: for points outside all of them.
double levelOnNearestEdge(const Terrain& terrain, const Vec2& p) {
  double best = std::numeric_limits<double>::max(), level = 0;
  for (const auto& triangle : terrain.triangles) {
    for (size_t k = 0; k < 3; ++k) {
      const Vec3 &a = terrain.points[triangle[k]], &b = terrain.points[triangle[(k + 1) % 3]];
      const Vec2 ab = plan(b) - plan(a);
      const double t = std::clamp(glm::dot(p - plan(a), ab) / glm::dot(ab, ab), 0.0, 1.0);
      const double distance = glm::distance(p, plan(a) + ab * t);
      if (distance >= best) continue;
      best = distance;
      level = a.z + (b.z - a.z) * t;
    }
  }
  return level;
}

}  // namespace

Polygon siteBoundary(const Job& job) {
  if (!job.site.boundary.empty()) return anticlockwise(job.site.boundary);
  Bounds b;
  for (const Vec2& p : job.outline) b.add({p, 0});
  for (const StandingBuilding& building : job.site.buildings) {
    for (const Vec2& p : building.outline) b.add({p, 0});
  }
  for (const GardenWall& wall : job.gardenWalls) {
    for (const Vec2& p : wall.line) b.add({p, 0});
  }
  b.low -= Vec3{kMargin, kMargin, 0};
  b.high += Vec3{kMargin, kMargin, 0};
  for (const SpotLevel& spot : job.site.spots) b.add({spot.at, 0});
  if (job.site.benchMark) b.add({job.site.benchMark->at, 0});
  return {{b.low.x, b.low.y}, {b.high.x, b.low.y}, {b.high.x, b.high.y}, {b.low.x, b.high.y}};
}

Terrain deriveTerrain(const Job& job) {
  Terrain terrain;
  terrain.boundary = siteBoundary(job);
  std::vector<Vec2> points;
  const auto put = [&](const Vec2& at, double level) {
    if (holds(points, at)) return;
    points.push_back(at);
    terrain.points.push_back({at, level});
  };
  for (const SpotLevel& spot : job.site.spots) put(spot.at, spot.level);
  for (const Vec2& corner : terrain.boundary) put(corner, levelFromSpots(job.site.spots, corner));
  terrain.triangles = delaunay(points);
  return terrain;
}

std::vector<double> terrainBreaks(const Terrain& terrain, const Vec2& a, const Vec2& b) {
  std::vector<double> breaks;
  for (const auto& triangle : terrain.triangles) {
    for (size_t k = 0; k < 3; ++k) {
      const Vec2 p{terrain.points[triangle[k]]}, q{terrain.points[triangle[(k + 1) % 3]]};
      const double d = cross(b - a, q - p);
      if (d == 0) continue;
      const double t = cross(p - a, q - p) / d, u = cross(p - a, b - a) / d;
      if (t > 0 && t < 1 && u >= 0 && u <= 1) breaks.push_back(t);
    }
  }
  std::sort(breaks.begin(), breaks.end());
  return breaks;
}

LevelRange levelsAlong(const Terrain& terrain, const Vec2& a, const Vec2& b) {
  LevelRange range{terrain.levelAt(a), terrain.levelAt(a)};
  const auto see = [&](const Vec2& p) {
    const double z = terrain.levelAt(p);
    range.low = std::min(range.low, z);
    range.high = std::max(range.high, z);
  };
  for (const double t : terrainBreaks(terrain, a, b)) see(a + (b - a) * t);
  see(b);
  return range;
}

LevelRange levelsAlong(const Terrain& terrain, const Polygon& outline) {
  LevelRange range{std::numeric_limits<double>::max(), std::numeric_limits<double>::lowest()};
  for (size_t i = 0; i < outline.size(); ++i) {
    const LevelRange side = levelsAlong(terrain, outline[i], outline[(i + 1) % outline.size()]);
    range.low = std::min(range.low, side.low);
    range.high = std::max(range.high, side.high);
  }
  return range;
}

Plane Terrain::planeOf(size_t triangle) const {
  const auto& [i, j, k] = triangles[triangle];
  const Vec3 u = points[j] - points[i], v = points[k] - points[i];
  const double twice = u.x * v.y - u.y * v.x;
  const Vec2 slope{(u.z * v.y - v.z * u.y) / twice, (u.x * v.z - v.x * u.z) / twice};
  return {slope, points[i].z - glm::dot(slope, plan(points[i]))};
}

double Terrain::levelAt(const Vec2& p) const {
  for (size_t t = 0; t < triangles.size(); ++t) {
    const Vec2 a = plan(points[triangles[t][0]]), b = plan(points[triangles[t][1]]),
               c = plan(points[triangles[t][2]]);
    const double twice = cross(b - a, c - a);
    const double wa = cross(b - p, c - p) / twice, wb = cross(c - p, a - p) / twice;
    const double wc = 1 - wa - wb;
    if (wa < -1e-12 || wb < -1e-12 || wc < -1e-12) continue;
    return wa * points[triangles[t][0]].z + wb * points[triangles[t][1]].z +
           wc * points[triangles[t][2]].z;
  }
  return levelOnNearestEdge(*this, p);
}

}  // namespace model
