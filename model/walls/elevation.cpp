// The rectangles' edges make a grid; cells are in or out; the outline between the two is traced.
#include "model/walls/elevation.h"

#include <algorithm>
#include <cmath>

namespace model {

namespace {

constexpr double kSameLine = 1e-6;  // metres
constexpr double kDrawBack = 1e-4;  // metres

// 0 right, 1 up, 2 left, 3 down; one more is a quarter turn to the left.
constexpr int kDs[] = {1, 0, -1, 0}, kDz[] = {0, 1, 0, -1};

std::vector<double> gridLines(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  std::vector<double> lines;
  for (const double v : values) {
    if (lines.empty() || v - lines.back() > kSameLine) lines.push_back(v);
  }
  return lines;
}

int lineOf(const std::vector<double>& lines, double v) {
  return static_cast<int>(std::lower_bound(lines.begin(), lines.end(), v - kSameLine) -
                          lines.begin());
}

// The parts of the cuts that can matter: fewer lines make a smaller grid.
std::vector<Rect> within(const std::vector<Rect>& add, const std::vector<Rect>& cut) {
  if (add.empty()) return {};
  Rect all = add[0];
  for (const Rect& r : add) {
    all = {std::min(all.s0, r.s0), std::min(all.z0, r.z0), std::max(all.s1, r.s1),
           std::max(all.z1, r.z1)};
  }
  std::vector<Rect> near;
  for (const Rect& r : cut) {
    if (!r.overlaps(all)) continue;
    near.push_back({std::max(r.s0, all.s0), std::max(r.z0, all.z0), std::min(r.s1, all.s1),
                    std::min(r.z1, all.z1)});
  }
  return near;
}

class Grid {
 public:
  Grid(const std::vector<Rect>& add, const std::vector<Rect>& cut) {
    std::vector<double> s, z;
    for (const auto* rects : {&add, &cut}) {
      for (const Rect& r : *rects) {
        s.insert(s.end(), {r.s0, r.s1});
        z.insert(z.end(), {r.z0, r.z1});
      }
    }
    s_ = gridLines(std::move(s));
    z_ = gridLines(std::move(z));
    in_.assign(s_.size() * z_.size(), 0);
    for (const Rect& r : add) fill(r, 1);
    for (const Rect& r : cut) fill(r, 0);
    traced_.assign(in_.size(), 0);
  }

  std::vector<Polygon> trace() {
    std::vector<Polygon> loops;
    for (int j = 0; j < static_cast<int>(z_.size()); ++j) {
      for (int i = 0; i < static_cast<int>(s_.size()); ++i) {
        // Every loop has a step to the right with the inside above it.
        if (isOutline(i, j, 0) && !traced(i, j)) loops.push_back(follow(i, j));
      }
    }
    return loops;
  }

 private:
  bool in(int i, int j) const {
    if (i < 0 || j < 0 || i + 1 >= static_cast<int>(s_.size()) ||
        j + 1 >= static_cast<int>(z_.size())) {
      return false;
    }
    return in_[static_cast<size_t>(j) * s_.size() + static_cast<size_t>(i)] != 0;
  }

  void fill(const Rect& r, unsigned char value) {
    const int i0 = lineOf(s_, r.s0), i1 = lineOf(s_, r.s1);
    const int j0 = lineOf(z_, r.z0), j1 = lineOf(z_, r.z1);
    for (int j = j0; j < j1; ++j) {
      for (int i = i0; i < i1; ++i)
        in_[static_cast<size_t>(j) * s_.size() + static_cast<size_t>(i)] = value;
    }
  }

  // Is the step from grid point (i, j) along `way` an outline with the inside on its left?
  bool isOutline(int i, int j, int way) const {
    switch (way) {
      case 0:
        return in(i, j) && !in(i, j - 1);
      case 1:
        return in(i - 1, j) && !in(i, j);
      case 2:
        return in(i - 1, j - 1) && !in(i - 1, j);
      default:
        return in(i, j - 1) && !in(i - 1, j - 1);
    }
  }

  // Steps to the right that a loop has gone along.
  unsigned char& traced(int i, int j) {
    return traced_[static_cast<size_t>(j) * s_.size() + static_cast<size_t>(i)];
  }

  Polygon follow(int i, int j) {
    Polygon loop;
    for (int way = 0; way != 0 || !traced(i, j);) {
      if (way == 0) traced(i, j) = 1;
      i += kDs[way];
      j += kDz[way];
      const int left = (way + 1) % 4, right = (way + 3) % 4;
      if (isOutline(i, j, left)) {
        const bool meetsAtPoint = isOutline(i, j, right);
        Vec2 p{s_[static_cast<size_t>(i)], z_[static_cast<size_t>(j)]};
        if (meetsAtPoint) {
          p.x += kDrawBack * (kDs[left] - kDs[way]);
          p.y += kDrawBack * (kDz[left] - kDz[way]);
        }
        loop.push_back(p);
        way = left;
      } else if (!isOutline(i, j, way)) {
        loop.push_back({s_[static_cast<size_t>(i)], z_[static_cast<size_t>(j)]});
        way = right;
      }
    }
    return loop;
  }

  std::vector<double> s_, z_;
  std::vector<unsigned char> in_, traced_;
};

}  // namespace

Regions fromRectangles(const std::vector<Rect>& add, const std::vector<Rect>& cut) {
  const std::vector<Rect> near = within(add, cut);
  if (add.size() == 1 && near.empty()) {
    const Rect& r = add[0];
    if (r.s1 - r.s0 <= kSameLine || r.z1 - r.z0 <= kSameLine) return {};
    return {Region{{{r.s1, r.z0}, {r.s1, r.z1}, {r.s0, r.z1}, {r.s0, r.z0}}, {}}};
  }
  Grid grid(add, near);
  Regions regions;
  std::vector<Polygon> holes;
  for (Polygon& loop : grid.trace()) {
    if (signedArea(loop) > 0)
      regions.push_back({std::move(loop), {}});
    else
      holes.push_back(std::move(loop));
  }
  for (Polygon& hole : holes) {
    Region* home = nullptr;
    for (Region& region : regions) {
      if (!contains(region.outer, hole[0])) continue;
      if (home == nullptr || signedArea(region.outer) < signedArea(home->outer)) home = &region;
    }
    if (home != nullptr) home->holes.push_back(std::move(hole));
  }
  return regions;
}

}  // namespace model
