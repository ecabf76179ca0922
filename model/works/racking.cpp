#include "model/works/racking.h"

#include <algorithm>
#include <cmath>

namespace model {

namespace {

constexpr double kShare = 0.4;    // of the leaf's length: something is always left to run in
constexpr double kLeast = 0.050;  // metres: less is no corner
constexpr double kToBed = 0.100;  // metres beside a lintel's end: half a brick, so that it is laid

// The levels between courses, z0 and z1 included.
std::vector<double> courseLines(double z0, double z1, const Racking& racking) {
  std::vector<double> lines{z0};
  double z = racking.datum +
             racking.unitHeight * std::ceil((z0 - racking.datum + 1e-6) / racking.unitHeight);
  for (; z < z1 - 1e-6; z += racking.unitHeight) lines.push_back(z);
  lines.push_back(z1);
  return lines;
}

}  // namespace

std::vector<Rect> rackedCorner(const WallLayer& layer, bool atStart, double limit, double z0,
                               double z1, const Racking& racking) {
  const double most = std::min(limit, kShare * (layer.to - layer.from));
  if (most < kLeast || z1 - z0 < 1e-6) return {};
  const std::vector<double> lines = courseLines(z0, z1, racking);
  std::vector<Rect> rects;
  for (size_t i = 0; i + 1 < lines.size(); ++i) {
    const double fromTop = static_cast<double>(lines.size() - 2 - i);
    const double length = std::min(most, racking.unitLength * (1 + fromTop / 2));
    if (atStart)
      rects.push_back({layer.from, lines[i], layer.from + length, lines[i + 1]});
    else
      rects.push_back({layer.to - length, lines[i], layer.to, lines[i + 1]});
  }
  return rects;
}

double freeLength(const LeafPlan& plan, bool fromStart, double z0, double z1) {
  double free = plan.layer.to - plan.layer.from;
  const Rect band{plan.layer.from - 2, z0, plan.layer.to + 2, z1};
  const auto keepClear = [&](const Rect& hole) {
    if (!hole.overlaps(band)) return;
    free = std::min(free, fromStart ? hole.s0 - plan.layer.from : plan.layer.to - hole.s1);
  };
  for (const Rect& opening : plan.openings) keepClear(opening);
  for (const LintelPlan& lintel : plan.lintels) {
    const Rect& r = lintel.rect;
    if (!lintel.ownStage) keepClear({r.s0 - kToBed, r.z0, r.s1 + kToBed, r.z1});
  }
  return free;
}

}  // namespace model
