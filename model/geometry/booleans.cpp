// Unions, differences and intersections of regions, through Clipper.
#include <algorithm>
#include <cmath>
#include <polyclipping/clipper.hpp>
#include <unordered_map>

#include "model/geometry/polygon.h"

namespace model {
namespace {

using ClipperLib::cInt;
using ClipperLib::IntPoint;

constexpr double kGrid = 1e6;          // steps in a metre
constexpr double kThinnest = 0.01e-3;  // metres

struct PointHash {
  size_t operator()(const IntPoint& p) const {
    return std::hash<cInt>{}(p.X * 0x9E3779B97F4A7C15LL + p.Y);
  }
};
struct PointEqual {
  bool operator()(const IntPoint& a, const IntPoint& b) const { return a.X == b.X && a.Y == b.Y; }
};

// The grid, and the way back from it: a point that was given comes back exactly as it was given, so
// that neighbours built from the same points stay closed against each other.
class Grid {
 public:
  IntPoint toGrid(const Vec2& p) {
    const IntPoint q(std::llround(p.x * kGrid), std::llround(p.y * kGrid));
    given_.emplace(q, p);
    return q;
  }
  Vec2 fromGrid(const IntPoint& q) const {
    const auto found = given_.find(q);
    return found != given_.end() ? found->second : Vec2{double(q.X) / kGrid, double(q.Y) / kGrid};
  }
  ClipperLib::Paths toGrid(const Regions& regions) {
    ClipperLib::Paths paths;
    for (const Region& region : regions) {
      paths.push_back(toGrid(region.outer));
      for (const Polygon& hole : region.holes) paths.push_back(toGrid(hole));
    }
    return paths;
  }

 private:
  ClipperLib::Path toGrid(const Polygon& polygon) {
    ClipperLib::Path path;
    path.reserve(polygon.size());
    for (const Vec2& p : polygon) path.push_back(toGrid(p));
    return path;
  }
  std::unordered_map<IntPoint, Vec2, PointHash, PointEqual> given_;
};

bool lower(const Vec2& a, const Vec2& b) { return a.x != b.x ? a.x < b.x : a.y < b.y; }

// A rectangle's area over half its outline is its width, when it is thin.
bool isSliver(const Polygon& polygon) {
  double length = 0;
  for (size_t i = 0; i < polygon.size(); ++i) {
    const Vec2 d = polygon[(i + 1) % polygon.size()] - polygon[i];
    length += std::hypot(d.x, d.y);
  }
  return polygon.size() < 3 || std::abs(signedArea(polygon)) * 2 < kThinnest * length;
}

// The ring of one contour, beginning at its lowest point; empty when it is a sliver.
Polygon ringOf(const ClipperLib::Path& path, const Grid& grid, bool anticlockwise) {
  Polygon polygon;
  for (const IntPoint& p : path) polygon.push_back(grid.fromGrid(p));
  if (isSliver(polygon)) return {};
  if ((signedArea(polygon) > 0) != anticlockwise) std::reverse(polygon.begin(), polygon.end());
  std::rotate(polygon.begin(), std::min_element(polygon.begin(), polygon.end(), lower),
              polygon.end());
  return polygon;
}

bool ringLower(const Polygon& a, const Polygon& b) {
  return std::lexicographical_compare(a.begin(), a.end(), b.begin(), b.end(), lower);
}

void collect(const ClipperLib::PolyNode& parent, const Grid& grid, Regions& regions) {
  for (const ClipperLib::PolyNode* node : parent.Childs) {
    Region region{ringOf(node->Contour, grid, true), {}};
    for (const ClipperLib::PolyNode* hole : node->Childs) {
      Polygon around = ringOf(hole->Contour, grid, false);
      if (!around.empty()) region.holes.push_back(std::move(around));
      collect(*hole, grid, regions);
    }
    std::sort(region.holes.begin(), region.holes.end(), ringLower);
    if (!region.outer.empty()) regions.push_back(std::move(region));
  }
}

Regions combine(const Regions& a, const Regions& b, ClipperLib::ClipType kind) {
  Grid grid;
  ClipperLib::Clipper clipper;
  clipper.PreserveCollinear(true);
  clipper.StrictlySimple(true);
  clipper.AddPaths(grid.toGrid(a), ClipperLib::ptSubject, true);
  clipper.AddPaths(grid.toGrid(b), ClipperLib::ptClip, true);
  ClipperLib::PolyTree tree;
  // Non-zero: regions that overlap inside one list count once.
  clipper.Execute(kind, tree, ClipperLib::pftNonZero, ClipperLib::pftNonZero);
  Regions regions;
  collect(tree, grid, regions);
  std::sort(regions.begin(), regions.end(),
            [](const Region& p, const Region& q) { return ringLower(p.outer, q.outer); });
  return regions;
}

}  // namespace

Regions unite(const Regions& a, const Regions& b) { return combine(a, b, ClipperLib::ctUnion); }
Regions subtract(const Regions& a, const Regions& b) {
  return combine(a, b, ClipperLib::ctDifference);
}
Regions intersect(const Regions& a, const Regions& b) {
  return combine(a, b, ClipperLib::ctIntersection);
}

}  // namespace model
