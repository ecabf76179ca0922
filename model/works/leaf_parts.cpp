#include "model/works/leaf_parts.h"

#include <algorithm>
#include <cmath>

namespace model {

bool UnitsHeld::operator()(const MasonryUnit& unit) const {
  const double s = (unit.s0 + unit.s1) / 2, z = (unit.z0 + unit.z1) / 2;
  return std::any_of(rects_.begin(), rects_.end(),
                     [&](const Rect& r) { return s > r.s0 && s < r.s1 && z > r.z0 && z < r.z1; });
}

bool UnitsHeld::reaches(double bottom, double top) const {
  return std::any_of(rects_.begin(), rects_.end(),
                     [&](const Rect& r) { return r.z0 < top && r.z1 > bottom; });
}

Rect betweenLevels(double bottom, double top) { return {-1e6, bottom, 1e6, top}; }

LeafParts::LeafParts(LaidLeaf laid, const WallLayer& layer, Works& works)
    : laid_(std::move(laid)),
      layer_(layer),
      works_(works),
      taken_(laid_.units.size(), false),
      frame_(works.frames.size()) {
  works_.frames.push_back(laid_.frame);
}

std::vector<MasonryUnit> LeafParts::setAside(size_t band, double from, double to) {
  std::vector<MasonryUnit> units;
  for (size_t i = laid_.firstOf[band]; i < laid_.firstOf[band + 1]; ++i) {
    const MasonryUnit& unit = laid_.units[i];
    if (unit.s0 < from - 1e-6 || unit.s1 > to + 1e-6) continue;
    taken_[i] = true;
    units.push_back(unit);
  }
  return units;
}

void LeafParts::add(Element part, const UnitsHeld& holds, bool forth) {
  if (part.solid.empty()) return;
  part.frame = frame_;
  part.firstUnit = works_.units.size();
  take(part.placed, holds, forth);
  part.unitCount = works_.units.size() - part.firstUnit;
  model::add(works_, std::move(part));
}

std::vector<Rect> LeafParts::openEnded(std::vector<Rect> rects, bool atStart, bool both) const {
  for (Rect& r : rects) {
    if ((both || atStart) && r.s0 < layer_.from + 1e-6) r.s0 = -1e6;
    if ((both || !atStart) && r.s1 > layer_.to - 1e-6) r.s1 = 1e6;
  }
  return rects;
}

void LeafParts::take(const Placement& placed, const UnitsHeld& holds, bool forth) {
  std::vector<size_t> course;
  for (size_t band = 0; band + 1 < laid_.firstOf.size(); ++band) {
    // A unit's middle lies between the levels of its course.
    if (!holds.reaches(laid_.bands[band].bottom, laid_.bands[band].top)) continue;
    course.clear();
    for (size_t i = laid_.firstOf[band]; i < laid_.firstOf[band + 1]; ++i)
      if (!taken_[i] && holds(laid_.units[i])) course.push_back(i);
    if (course.empty()) continue;
    // By the bed first: a piece that is cut in height lies on another.
    std::stable_sort(course.begin(), course.end(), [&](size_t a, size_t b) {
      const MasonryUnit &p = laid_.units[a], &q = laid_.units[b];
      if (std::fabs(p.z0 - q.z0) > 1e-6) return p.z0 < q.z0;
      return forth ? p.s0 < q.s0 : p.s0 > q.s0;
    });
    const auto share = [&](double z) {
      return std::clamp((z - placed.low) / (placed.high - placed.low), 0.0, 1.0);
    };
    const double from = share(laid_.bands[band].bottom), to = share(laid_.bands[band].top);
    for (size_t k = 0; k < course.size(); ++k) {
      MasonryUnit unit = laid_.units[course[k]];
      const double done = (static_cast<double>(k) + 0.5) / static_cast<double>(course.size());
      unit.when = static_cast<float>(from + (to - from) * done);
      taken_[course[k]] = true;
      works_.units.push_back(unit);
    }
  }
}

}  // namespace model
