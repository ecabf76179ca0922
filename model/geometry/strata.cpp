#include "model/geometry/strata.h"

#include <algorithm>
#include <cmath>

#include "model/geometry/strata_solid.h"

namespace model {

namespace {
constexpr double kOneLevel = 1e-4;  // metres
}

Strata::Strata(const PlanMesh& mesh, std::vector<double> exact)
    : mesh_(mesh), exact_(std::move(exact)), levels_(mesh.points.size()) {
  std::sort(exact_.begin(), exact_.end());
}

std::uint32_t Strata::levelIndex(std::uint32_t point, double level) {
  const auto exact = std::lower_bound(exact_.begin(), exact_.end(), level - kOneLevel);
  if (exact != exact_.end() && *exact < level + kOneLevel) level = *exact;
  std::vector<double>& levels = levels_[point];
  for (std::uint32_t i = 0; i < levels.size(); ++i) {
    if (std::abs(levels[i] - level) < kOneLevel) return i;
  }
  levels.push_back(level);
  return static_cast<std::uint32_t>(levels.size() - 1);
}

void Strata::add(std::uint32_t thing, std::uint32_t cell, const CornerLevels& bottom,
                 const CornerLevels& top) {
  bool any = false;
  for (size_t k = 0; k < 3; ++k) any |= top[k] > bottom[k] + kOneLevel;
  if (!any) return;
  Layer layer{thing, cell, {}, {}};
  any = false;
  for (size_t k = 0; k < 3; ++k) {
    const std::uint32_t point = mesh_.cells[cell].corners[k];
    layer.bottom[k] = levelIndex(point, bottom[k]);
    layer.top[k] = levelIndex(point, std::max(bottom[k], top[k]));
    any |= layer.bottom[k] != layer.top[k];
  }
  if (any) layers_.push_back(layer);
}

std::vector<Solid> Strata::solids() const {
  std::uint32_t count = 0;
  for (const Layer& layer : layers_) count = std::max(count, layer.thing + 1);
  std::vector<std::vector<const Layer*>> byThing(count);
  for (const Layer& layer : layers_) byThing[layer.thing].push_back(&layer);
  std::vector<Solid> solids(count);
  StrataSolid builder(*this);
  for (std::uint32_t i = 0; i < count; ++i) {
    if (!byThing[i].empty()) solids[i] = builder.build(byThing[i]);
  }
  return solids;
}

}  // namespace model
