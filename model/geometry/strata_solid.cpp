#include "model/geometry/strata_solid.h"

#include <algorithm>

#include "model/geometry/touching_shells.h"

namespace model {

namespace {

constexpr std::uint32_t kNone = 0xffffffffu;

size_t after(size_t k) { return k == 2 ? 0 : k + 1; }

}  // namespace

StrataSolid::StrataSolid(const Strata& strata)
    : strata_(strata),
      firstLayer_(strata.mesh_.cells.size(), 0),
      layerCount_(strata.mesh_.cells.size(), 0),
      used_(strata.mesh_.points.size()) {
  std::uint32_t total = 0;
  for (const auto& levels : strata.levels_) {
    base_.push_back(total);
    total += static_cast<std::uint32_t>(levels.size());
  }
  pointOf_.assign(total, kNone);
}

double StrataSolid::level(std::uint32_t point, std::uint32_t index) const {
  return strata_.levels_[point][index];
}

std::uint32_t StrataSolid::pointIndex(std::uint32_t point, std::uint32_t index) {
  std::uint32_t& at = pointOf_[base_[point] + index];
  if (at == kNone) {
    at = static_cast<std::uint32_t>(solid_.points.size());
    solid_.points.push_back({strata_.mesh_.points[point], level(point, index)});
  }
  return at;
}

// By cell, lowest first, with layers that lie on one another made one.
std::vector<StrataSolid::Layer> StrataSolid::joined(std::vector<const Layer*>& layers) const {
  const auto height = [&](const Layer& layer) {
    double sum = 0;
    for (size_t k = 0; k < 3; ++k) {
      const std::uint32_t point = strata_.mesh_.cells[layer.cell].corners[k];
      sum += level(point, layer.bottom[k]) + level(point, layer.top[k]);
    }
    return sum;
  };
  std::sort(layers.begin(), layers.end(), [&](const Layer* a, const Layer* b) {
    return a->cell != b->cell ? a->cell < b->cell : height(*a) < height(*b);
  });
  std::vector<Layer> result;
  for (const Layer* layer : layers) {
    if (!result.empty() && result.back().cell == layer->cell && result.back().top == layer->bottom)
      result.back().top = layer->top;
    else
      result.push_back(*layer);
  }
  return result;
}

void StrataSolid::noteLevels(const std::vector<Layer>& layers) {
  for (const Layer& layer : layers) {
    for (size_t k = 0; k < 3; ++k) {
      const std::uint32_t point = strata_.mesh_.cells[layer.cell].corners[k];
      if (used_[point].empty()) usedPoints_.push_back(point);
      used_[point].push_back(layer.bottom[k]);
      used_[point].push_back(layer.top[k]);
    }
  }
  for (const std::uint32_t point : usedPoints_) {
    auto& list = used_[point];
    std::sort(list.begin(), list.end(),
              [&](std::uint32_t a, std::uint32_t b) { return level(point, a) < level(point, b); });
    list.erase(std::unique(list.begin(), list.end()), list.end());
  }
}

Solid StrataSolid::build(std::vector<const Layer*> pieces) {
  solid_ = {};
  const std::vector<Layer> layers = joined(pieces);
  noteLevels(layers);
  for (std::uint32_t i = 0; i < layers.size(); ++i) {
    if (layerCount_[layers[i].cell]++ == 0) firstLayer_[layers[i].cell] = i;
    caps(layers[i]);
  }
  for (size_t first = 0; first < layers.size();) {
    size_t last = first + layerCount_[layers[first].cell];
    sides(layers, first, last);
    first = last;
  }
  for (const Layer& layer : layers) layerCount_[layer.cell] = 0;
  for (const std::uint32_t point : usedPoints_) {
    for (const std::uint32_t index : used_[point]) pointOf_[base_[point] + index] = kNone;
    used_[point].clear();
  }
  usedPoints_.clear();
  separateTouchingShells(solid_);
  return std::move(solid_);
}

void StrataSolid::caps(const Layer& layer) {
  const auto& corners = strata_.mesh_.cells[layer.cell].corners;
  std::array<std::uint32_t, 3> low{}, high{};
  for (size_t k = 0; k < 3; ++k) {
    low[k] = pointIndex(corners[k], layer.bottom[k]);
    high[k] = pointIndex(corners[k], layer.top[k]);
  }
  solid_.triangles.push_back(high);
  solid_.triangles.push_back({low[0], low[2], low[1]});
}

std::vector<StrataSolid::Band> StrataSolid::bandsAlong(const std::vector<Layer>& layers,
                                                       std::uint32_t cell, std::uint32_t u,
                                                       std::uint32_t v) const {
  const auto& corners = strata_.mesh_.cells[cell].corners;
  size_t iu = 0, iv = 0;
  for (size_t k = 0; k < 3; ++k) {
    if (corners[k] == u) iu = k;
    if (corners[k] == v) iv = k;
  }
  std::vector<Band> bands;
  for (std::uint32_t i = 0; i < layerCount_[cell]; ++i) {
    const Layer& layer = layers[firstLayer_[cell] + i];
    const Band band{layer.bottom[iu], layer.bottom[iv], layer.top[iu], layer.top[iv]};
    if (band.bottomU != band.topU || band.bottomV != band.topV) bands.push_back(band);
  }
  return bands;
}

void StrataSolid::sides(const std::vector<Layer>& layers, size_t first, size_t last) {
  const std::uint32_t index = layers[first].cell;
  const PlanCell& cell = strata_.mesh_.cells[index];
  (void)last;
  for (size_t k = 0; k < 3; ++k) {
    const std::uint32_t other = cell.beyond[k];
    const bool shared = other != kNoCell && layerCount_[other] > 0;
    if (shared && other < index) continue;  // done from the other side
    const std::uint32_t u = cell.corners[k], v = cell.corners[after(k)];
    const auto ours = bandsAlong(layers, index, u, v);
    if (shared)
      difference(u, v, ours, bandsAlong(layers, other, u, v));
    else
      for (const Band& band : ours) face(u, v, band);
  }
}

// The upright face over the edge from u to v, seen from its right, zipped between the levels that
// the thing uses at both ends.
void StrataSolid::face(std::uint32_t u, std::uint32_t v, const Band& band) {
  const auto chain = [&](std::uint32_t point, std::uint32_t low, std::uint32_t high) {
    std::vector<std::uint32_t> result;
    bool on = false;
    for (const std::uint32_t index : used_[point]) {
      on |= index == low;
      if (on) result.push_back(pointIndex(point, index));
      if (index == high) break;
    }
    return result;
  };
  const auto left = chain(u, band.bottomU, band.topU), right = chain(v, band.bottomV, band.topV);
  size_t i = 0, j = 0;
  while (i + 1 < left.size() || j + 1 < right.size()) {
    const bool onLeft =
        j + 1 >= right.size() ||
        (i + 1 < left.size() && solid_.points[left[i + 1]].z <= solid_.points[right[j + 1]].z);
    if (onLeft) {
      solid_.triangles.push_back({left[i], right[j], left[i + 1]});
      ++i;
    } else {
      solid_.triangles.push_back({left[i], right[j], right[j + 1]});
      ++j;
    }
  }
}

// The faces where only one side of the edge has the thing.
void StrataSolid::difference(std::uint32_t u, std::uint32_t v, const std::vector<Band>& ours,
                             const std::vector<Band>& theirs) {
  using Line = std::array<std::uint32_t, 2>;
  std::vector<Line> lines;
  for (const auto* bands : {&ours, &theirs}) {
    for (const Band& b : *bands) {
      lines.push_back({b.bottomU, b.bottomV});
      lines.push_back({b.topU, b.topV});
    }
  }
  const auto under = [&](const Line& a, const Line& b) {
    const double au = level(u, a[0]), bu = level(u, b[0]);
    return au != bu ? au < bu : level(v, a[1]) < level(v, b[1]);
  };
  std::sort(lines.begin(), lines.end(), under);
  lines.erase(std::unique(lines.begin(), lines.end()), lines.end());
  for (size_t i = 0; i + 1 < lines.size(); ++i) {
    if (level(v, lines[i][1]) <= level(v, lines[i + 1][1])) continue;
    // Lines that cross over the edge: keep both faces whole, they cancel as they should.
    for (const Band& b : ours) face(u, v, b);
    for (const Band& b : theirs) face(v, u, {b.bottomV, b.bottomU, b.topV, b.topU});
    return;
  }
  const auto holds = [&](const std::vector<Band>& bands, const Line& low, const Line& high) {
    return std::any_of(bands.begin(), bands.end(), [&](const Band& b) {
      return !under(low, {b.bottomU, b.bottomV}) && !under({b.topU, b.topV}, high);
    });
  };
  for (size_t i = 0; i + 1 < lines.size(); ++i) {
    const Line &low = lines[i], &high = lines[i + 1];
    const bool here = holds(ours, low, high), there = holds(theirs, low, high);
    if (here == there) continue;
    if (here)
      face(u, v, {low[0], low[1], high[0], high[1]});
    else
      face(v, u, {low[1], low[0], high[1], high[0]});
  }
}

}  // namespace model
