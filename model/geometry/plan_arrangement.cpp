#include "model/geometry/plan_arrangement.h"

#include <algorithm>
#include <cmath>
#include <unordered_map>

namespace model {

namespace {

__extension__ typedef __int128 Wide;

constexpr double kPerMetre = 1e6;
constexpr std::int64_t kNear = 4;  // micrometres: points this close are one
constexpr int kMostRounds = 12;

// Gives each place on the plan one index.
class PointTable {
 public:
  explicit PointTable(std::vector<GridPoint>& points) : points_(points) {}

  std::uint32_t indexOf(const GridPoint& p) {
    for (std::int64_t dx = -1; dx <= 1; ++dx) {
      for (std::int64_t dy = -1; dy <= 1; ++dy) {
        const auto found = cells_.find(key(cellOf(p.x) + dx, cellOf(p.y) + dy));
        if (found == cells_.end()) continue;
        for (const std::uint32_t i : found->second) {
          if (std::abs(points_[i].x - p.x) <= kNear && std::abs(points_[i].y - p.y) <= kNear) {
            return i;
          }
        }
      }
    }
    const auto index = static_cast<std::uint32_t>(points_.size());
    points_.push_back(p);
    cells_[key(cellOf(p.x), cellOf(p.y))].push_back(index);
    return index;
  }

 private:
  static std::int64_t cellOf(std::int64_t v) { return v >> 3; }
  static std::uint64_t key(std::int64_t x, std::int64_t y) {
    return static_cast<std::uint64_t>(x) * 0x9E3779B97F4A7C15u ^ static_cast<std::uint64_t>(y);
  }

  std::vector<GridPoint>& points_;
  std::unordered_map<std::uint64_t, std::vector<std::uint32_t>> cells_;
};

struct Edge {
  std::array<std::uint32_t, 2> ends{};
  GridPoint low, high;  // bounds
  bool fresh = true;    // not yet held against the others
  std::vector<std::uint32_t> splits;
};

// True when p lies beside the edge's inside, within a micrometre or two of it.
bool nearInside(const GridPoint& a, const GridPoint& b, const GridPoint& p) {
  const auto ux = static_cast<double>(b.x - a.x), uy = static_cast<double>(b.y - a.y);
  const auto px = static_cast<double>(p.x - a.x), py = static_cast<double>(p.y - a.y);
  const double square = ux * ux + uy * uy, along = px * ux + py * uy;
  if (along <= 0 || along >= square) return false;
  const double across = px * uy - py * ux;
  return across * across <= 4.0 * square;
}

GridPoint crossing(const GridPoint& a, const GridPoint& b, const GridPoint& c, const GridPoint& d) {
  const auto ux = static_cast<long double>(b.x - a.x), uy = static_cast<long double>(b.y - a.y);
  const auto vx = static_cast<long double>(d.x - c.x), vy = static_cast<long double>(d.y - c.y);
  const auto wx = static_cast<long double>(c.x - a.x), wy = static_cast<long double>(c.y - a.y);
  const long double t = (wx * vy - wy * vx) / (ux * vy - uy * vx);
  return {a.x + std::llroundl(t * ux), a.y + std::llroundl(t * uy)};
}

class Arranger {
 public:
  explicit Arranger(const std::vector<PlanCut>& cuts) : table_(out_.points) {
    for (const PlanCut& cut : cuts) {
      push(table_.indexOf(onGrid(cut.a)), table_.indexOf(onGrid(cut.b)));
    }
    tidy();
  }

  Arrangement run() {
    for (int round = 0; round < kMostRounds && findSplits(); ++round) split();
    for (const Edge& edge : edges_) out_.edges.push_back(edge.ends);
    std::sort(out_.edges.begin(), out_.edges.end());
    return std::move(out_);
  }

 private:
  void push(std::uint32_t a, std::uint32_t b) {
    if (a == b) return;
    Edge edge;
    edge.ends = {std::min(a, b), std::max(a, b)};
    const GridPoint &p = out_.points[a], &q = out_.points[b];
    edge.low = {std::min(p.x, q.x) - kNear, std::min(p.y, q.y) - kNear};
    edge.high = {std::max(p.x, q.x) + kNear, std::max(p.y, q.y) + kNear};
    edges_.push_back(std::move(edge));
  }

  // Sorted from west to east for the sweep, each edge once; an old edge wins over its fresh twin.
  void tidy() {
    std::sort(edges_.begin(), edges_.end(), [](const Edge& a, const Edge& b) {
      if (a.low.x != b.low.x) return a.low.x < b.low.x;
      if (a.ends != b.ends) return a.ends < b.ends;
      return a.fresh < b.fresh;
    });
    edges_.erase(std::unique(edges_.begin(), edges_.end(),
                             [](const Edge& a, const Edge& b) { return a.ends == b.ends; }),
                 edges_.end());
  }

  bool findSplits() {
    for (size_t i = 0; i < edges_.size(); ++i) {
      for (size_t j = i + 1; j < edges_.size() && edges_[j].low.x <= edges_[i].high.x; ++j) {
        Edge &e = edges_[i], &f = edges_[j];
        if (!e.fresh && !f.fresh) continue;
        if (e.low.y > f.high.y || f.low.y > e.high.y) continue;
        meet(e, f);
      }
    }
    return std::any_of(edges_.begin(), edges_.end(),
                       [](const Edge& e) { return !e.splits.empty(); });
  }

  void meet(Edge& e, Edge& f) {
    const GridPoint a = out_.points[e.ends[0]], b = out_.points[e.ends[1]];
    const GridPoint c = out_.points[f.ends[0]], d = out_.points[f.ends[1]];
    bool touching = false;
    for (const std::uint32_t p : f.ends) touching |= touch(e, p);
    for (const std::uint32_t p : e.ends) touching |= touch(f, p);
    if (touching) return;
    if (sideOf(a, b, c) * sideOf(a, b, d) >= 0 || sideOf(c, d, a) * sideOf(c, d, b) >= 0) return;
    const std::uint32_t p = table_.indexOf(crossing(a, b, c, d));
    if (p != e.ends[0] && p != e.ends[1]) e.splits.push_back(p);
    if (p != f.ends[0] && p != f.ends[1]) f.splits.push_back(p);
  }

  bool touch(Edge& e, std::uint32_t p) {
    if (p == e.ends[0] || p == e.ends[1]) return false;
    if (!nearInside(out_.points[e.ends[0]], out_.points[e.ends[1]], out_.points[p])) return false;
    e.splits.push_back(p);
    return true;
  }

  void split() {
    std::vector<Edge> old;
    old.swap(edges_);
    for (Edge& edge : old) {
      if (edge.splits.empty()) {
        edge.fresh = false;
        edges_.push_back(std::move(edge));
        continue;
      }
      const GridPoint a = out_.points[edge.ends[0]], b = out_.points[edge.ends[1]];
      const auto along = [&](std::uint32_t i) {
        const GridPoint& p = out_.points[i];
        return static_cast<Wide>(p.x - a.x) * (b.x - a.x) +
               static_cast<Wide>(p.y - a.y) * (b.y - a.y);
      };
      std::sort(edge.splits.begin(), edge.splits.end(), [&](std::uint32_t i, std::uint32_t j) {
        const Wide u = along(i), v = along(j);
        return u != v ? u < v : i < j;
      });
      std::uint32_t from = edge.ends[0];
      for (const std::uint32_t p : edge.splits) {
        push(from, p);
        from = p;
      }
      push(from, edge.ends[1]);
    }
    tidy();
  }

  Arrangement out_;
  PointTable table_;
  std::vector<Edge> edges_;
};

}  // namespace

GridPoint onGrid(const Vec2& p) {
  return {std::llround(p.x * kPerMetre), std::llround(p.y * kPerMetre)};
}

Vec2 offGrid(const GridPoint& p) {
  return {static_cast<double>(p.x) / kPerMetre, static_cast<double>(p.y) / kPerMetre};
}

int sideOf(const GridPoint& a, const GridPoint& b, const GridPoint& c) {
  const Wide turn =
      static_cast<Wide>(b.x - a.x) * (c.y - a.y) - static_cast<Wide>(b.y - a.y) * (c.x - a.x);
  return turn > 0 ? 1 : turn < 0 ? -1 : 0;
}

Arrangement arrange(const std::vector<PlanCut>& cuts) { return Arranger(cuts).run(); }

}  // namespace model
