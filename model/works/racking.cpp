#include "model/works/racking.h"

#include <algorithm>
#include <vector>

namespace model {

namespace {

constexpr double kShare = 0.4;        // of the leaf's length: something is always left to run in
constexpr double kWideJoint = 0.040;  // metres: a wider gap is an opening
constexpr double kLeast = 0.050;      // metres: less is no corner
constexpr double kToBed = 0.100;  // metres beside a lintel's end: half a brick, so that it is laid

constexpr double kHair = 1e-6;

// From the leaf's end to the middle of the last joint that is not past `most`, or to the end of
// what is laid there; 0 when the first piece is past it.
double reach(const LaidLeaf& laid, size_t band, const WallLayer& layer, bool atStart, double most) {
  std::vector<const MasonryUnit*> row;
  for (size_t i = laid.firstOf[band]; i < laid.firstOf[band + 1]; ++i) {
    const MasonryUnit& unit = laid.units[i];
    if (unit.z1 > laid.bands[band].top - kHair) row.push_back(&unit);
  }
  const auto bySides = [&](const MasonryUnit* a, const MasonryUnit* b) {
    return atStart ? a->s0 < b->s0 : a->s1 > b->s1;
  };
  std::stable_sort(row.begin(), row.end(), bySides);
  double length = 0;
  for (size_t i = 0; i < row.size(); ++i) {
    const double end = atStart ? row[i]->s1 - layer.from : layer.to - row[i]->s0;
    double gap = 1;
    if (i + 1 < row.size()) {
      const MasonryUnit& next = *row[i + 1];
      gap = atStart ? next.s0 - row[i]->s1 : row[i]->s0 - next.s1;
    }
    const bool goesOn = gap < kWideJoint;
    const double to = goesOn ? end + gap / 2 : end;
    if (to > most + kHair) break;
    length = to;
    if (!goesOn) break;
  }
  return length;
}

}  // namespace

std::vector<Rect> rackedCorner(const LaidLeaf& laid, const WallLayer& layer, bool atStart,
                               double limit, double z0, double z1, double module) {
  double most = std::min(limit, kShare * (layer.to - layer.from));
  std::vector<size_t> bands;
  for (size_t i = 0; i < laid.bands.size(); ++i)
    if (laid.bands[i].bottom > z0 - kHair && laid.bands[i].top < z1 + kHair) bands.push_back(i);
  std::vector<Rect> rects;
  for (size_t i = 0; i < bands.size(); ++i) {
    const CourseBand& band = laid.bands[bands[i]];
    const double fromTop = static_cast<double>(bands.size() - 1 - i);
    const double nominal = module * (1 + fromTop / 2);
    // Made up in mortar, a course has no joints to go by.
    const bool bare = laid.firstOf[bands[i]] == laid.firstOf[bands[i] + 1];
    const double length =
        bare ? std::min(nominal, most)
             : reach(laid, bands[i], layer, atStart, std::min(nominal + module / 4, most));
    if (length < kLeast) break;
    most = length;  // nothing overhangs
    if (atStart)
      rects.push_back({layer.from, band.bottom, layer.from + length, band.top});
    else
      rects.push_back({layer.to - length, band.bottom, layer.to, band.top});
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
