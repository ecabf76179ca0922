// Points are added from west to east, each joined to the part of the hull that it sees; edges are
// then turned until no point lies inside the circle of a triangle (Lawson's flips).
#include "model/settingout/delaunay.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <utility>

namespace model {

namespace {

using Edge = std::pair<unsigned, unsigned>;

// Twice the area of a-b-c in extended precision; zero when the points are in line to 1e-9 m.
long double turn(const Vec2& a, const Vec2& b, const Vec2& c) {
  const long double ux = static_cast<long double>(b.x) - a.x,
                    uy = static_cast<long double>(b.y) - a.y;
  const long double vx = static_cast<long double>(c.x) - a.x,
                    vy = static_cast<long double>(c.y) - a.y;
  const long double twice = ux * vy - uy * vx;
  const long double reach = std::sqrt(std::max(ux * ux + uy * uy, vx * vx + vy * vy));
  return std::fabs(twice) <= 1e-9L * reach ? 0.0L : twice;
}

// Positive when d lies inside the circle through a, b, c (anticlockwise), clear of rounding.
bool inCircle(const Vec2& a, const Vec2& b, const Vec2& c, const Vec2& d) {
  const long double ax = static_cast<long double>(a.x) - d.x,
                    ay = static_cast<long double>(a.y) - d.y;
  const long double bx = static_cast<long double>(b.x) - d.x,
                    by = static_cast<long double>(b.y) - d.y;
  const long double cx = static_cast<long double>(c.x) - d.x,
                    cy = static_cast<long double>(c.y) - d.y;
  const long double aa = ax * ax + ay * ay, bb = bx * bx + by * by, cc = cx * cx + cy * cy;
  const long double value =
      aa * (bx * cy - by * cx) - bb * (ax * cy - ay * cx) + cc * (ax * by - ay * bx);
  const long double size = std::max({aa, bb, cc});
  return value > 1e-12L * size * size;
}

class Mesh {
 public:
  explicit Mesh(const std::vector<Vec2>& points) : points_(points) {}

  // Hull anticlockwise. A point that is added lies outside it or on its edge.
  void addOutside(unsigned p) {
    std::vector<unsigned> seen;  // hull edges that p sees, by their first point's place
    const size_t n = hull_.size();
    std::vector<bool> visible(n);
    for (size_t i = 0; i < n; ++i) {
      visible[i] = turn(points_[hull_[i]], points_[hull_[(i + 1) % n]], points_[p]) < 0;
    }
    size_t first = 0;
    while (first < n && !(visible[first] && !visible[(first + n - 1) % n])) ++first;
    if (first == n) return;  // in line with the hull and hidden: cannot happen for distinct points
    std::vector<unsigned> next{hull_[first], p};
    size_t i = first;
    for (; visible[i % n]; ++i) {
      triangles_.push_back({hull_[(i + 1) % n], hull_[i % n], p});
    }
    for (; i % n != first; ++i) next.push_back(hull_[i % n]);
    hull_ = std::move(next);
  }

  // The first triangles: a fan from a run of points in line to the first one off that line.
  void start(const std::vector<unsigned>& line, unsigned apex) {
    const bool left = turn(points_[line[0]], points_[line[1]], points_[apex]) > 0;
    for (size_t i = 0; i + 1 < line.size(); ++i) {
      if (left)
        triangles_.push_back({line[i], line[i + 1], apex});
      else
        triangles_.push_back({line[i + 1], line[i], apex});
    }
    hull_ = line;
    if (!left) std::reverse(hull_.begin(), hull_.end());
    hull_.push_back(apex);
  }

  void turnEdges() {
    // Every pass turns each bad edge once; the sum of circle sizes falls, so passes end.
    for (size_t pass = 0; pass < 4 * points_.size() + 16; ++pass) {
      if (!turnOnce()) return;
    }
  }

  Triangles take() { return std::move(triangles_); }

 private:
  bool turnOnce() {
    std::map<Edge, size_t> owner;
    for (size_t t = 0; t < triangles_.size(); ++t) {
      for (int k = 0; k < 3; ++k) owner[{triangles_[t][k], triangles_[t][(k + 1) % 3]}] = t;
    }
    std::vector<bool> touched(triangles_.size(), false);
    bool any = false;
    for (const auto& [edge, t] : owner) {
      if (edge.first > edge.second) continue;
      const auto other = owner.find({edge.second, edge.first});
      if (other == owner.end() || touched[t] || touched[other->second]) continue;
      if (!turnEdge(edge, t, other->second)) continue;
      touched[t] = touched[other->second] = true;
      any = true;
    }
    return any;
  }

  unsigned apexOf(size_t t, const Edge& edge) const {
    for (const unsigned p : triangles_[t]) {
      if (p != edge.first && p != edge.second) return p;
    }
    return edge.first;
  }

  bool turnEdge(const Edge& edge, size_t t, size_t u) {
    const unsigned a = edge.first, b = edge.second, c = apexOf(t, edge), d = apexOf(u, edge);
    if (!inCircle(points_[a], points_[b], points_[c], points_[d])) return false;
    if (turn(points_[d], points_[b], points_[c]) <= 0) return false;
    if (turn(points_[a], points_[d], points_[c]) <= 0) return false;
    triangles_[t] = {a, d, c};
    triangles_[u] = {d, b, c};
    return true;
  }

  const std::vector<Vec2>& points_;
  std::vector<unsigned> hull_;
  Triangles triangles_;
};

}  // namespace

Triangles delaunay(const std::vector<Vec2>& points) {
  if (points.size() < 3) return {};
  std::vector<unsigned> order(points.size());
  std::iota(order.begin(), order.end(), 0U);
  std::sort(order.begin(), order.end(), [&](unsigned a, unsigned b) {
    const Vec2 &p = points[a], &q = points[b];
    return p.x != q.x ? p.x < q.x : p.y != q.y ? p.y < q.y : a < b;
  });
  size_t line = 2;
  while (line < order.size() &&
         turn(points[order[0]], points[order[1]], points[order[line]]) == 0) {
    ++line;
  }
  if (line == order.size()) return {};
  Mesh mesh(points);
  mesh.start({order.begin(), order.begin() + static_cast<std::ptrdiff_t>(line)}, order[line]);
  for (size_t i = line + 1; i < order.size(); ++i) mesh.addOutside(order[i]);
  mesh.turnEdges();
  return mesh.take();
}

}  // namespace model
