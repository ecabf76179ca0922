#include "model/works/racking.h"

#include <algorithm>
#include <limits>
#include <vector>

namespace model {

namespace {

constexpr double kShare = 0.4;        // of the leaf's length: something is always left to run in
constexpr double kWideJoint = 0.040;  // metres: a wider gap is an opening
constexpr double kLeast = 0.050;      // metres: less is no corner
constexpr double kToBed = 0.100;  // metres beside a lintel's end: half a brick, so that it is laid

constexpr double kHair = 1e-6;

// What is racked back, from where and which way.
struct Lead {
  double from = 0;      // s of the end of the leaf, or of a jamb
  bool forward = true;  // along the wall
  double most = 0;      // of its length, metres

  double along(double s) const { return forward ? s - from : from - s; }
  Rect rect(double length, const CourseBand& band) const {
    return forward ? Rect{from, band.bottom, from + length, band.top}
                   : Rect{from - length, band.bottom, from, band.top};
  }
};

// By the row on the face, in leaves of several: from the lead's end to the middle of the last joint
// that is not past `most`, or to the end of what is laid there; 0 when the first piece is past it.
double reach(const LaidLeaf& laid, size_t band, const Lead& lead, double most) {
  const size_t first = laid.firstOf[band], last = laid.firstOf[band + 1];
  float face = std::numeric_limits<float>::max();
  for (size_t i = first; i < last; ++i) face = std::min(face, laid.units[i].d0);
  std::vector<const MasonryUnit*> row;
  for (size_t i = first; i < last; ++i) {
    const MasonryUnit& unit = laid.units[i];
    const bool far = lead.along(lead.forward ? unit.s0 : unit.s1) > most + kWideJoint;
    const bool behind = lead.along(lead.forward ? unit.s1 : unit.s0) < kHair;
    const bool whole = unit.z1 > laid.bands[band].top - kHair;
    if (whole && !far && !behind && unit.d0 < face + kHair) row.push_back(&unit);
  }
  const auto near = [&](const MasonryUnit* unit) {
    return lead.along(lead.forward ? unit->s0 : unit->s1);
  };
  const auto far = [&](const MasonryUnit* unit) {
    return lead.along(lead.forward ? unit->s1 : unit->s0);
  };
  std::stable_sort(row.begin(), row.end(),
                   [&](const auto* a, const auto* b) { return near(a) < near(b); });
  double length = 0;
  for (size_t i = 0; i < row.size(); ++i) {
    const double gap = i + 1 < row.size() ? near(row[i + 1]) - far(row[i]) : 1;
    const bool goesOn = gap < kWideJoint;
    const double to = goesOn ? far(row[i]) + gap / 2 : far(row[i]);
    if (to > most + kHair) break;
    length = to;
    if (!goesOn) break;
  }
  return length;
}

std::vector<Rect> racked(const LaidLeaf& laid, const Lead& lead, double z0, double z1,
                         double module) {
  std::vector<size_t> bands;
  for (size_t i = 0; i < laid.bands.size(); ++i)
    if (laid.bands[i].bottom > z0 - kHair && laid.bands[i].top < z1 + kHair) bands.push_back(i);
  double most = lead.most;
  std::vector<Rect> rects;
  for (size_t i = 0; i < bands.size(); ++i) {
    const double fromTop = static_cast<double>(bands.size() - 1 - i);
    const double nominal = module * (1 + fromTop / 2);
    // Made up in mortar, a course has no joints to go by.
    const bool bare = laid.firstOf[bands[i]] == laid.firstOf[bands[i] + 1];
    const double length = bare ? std::min(nominal, most)
                               : reach(laid, bands[i], lead, std::min(nominal + module / 4, most));
    if (length < kLeast) break;
    most = length;  // nothing overhangs
    rects.push_back(lead.rect(length, laid.bands[bands[i]]));
  }
  return rects;
}

}  // namespace

std::vector<Rect> rackedCorner(const LaidLeaf& laid, const WallLayer& layer, bool atStart,
                               double limit, double z0, double z1, double module) {
  const double most = std::min(limit, kShare * (layer.to - layer.from));
  return racked(laid, {atStart ? layer.from : layer.to, atStart, most}, z0, z1, module);
}

std::vector<Rect> rackedReveals(const LaidLeaf& laid, const LeafPlan& plan,
                                const std::vector<Rect>& corners, double z0, double z1,
                                double module) {
  std::vector<Rect> leads;
  for (const Rect& opening : plan.openings) {
    // One that begins higher stands on what is run in below it.
    if (opening.z0 > z0 + kHair || opening.z1 < z0 + module) continue;
    const double top = std::min(z1, opening.z1);
    for (const bool forward : {true, false}) {
      const double jamb = forward ? opening.s1 : opening.s0;
      if (jamb < plan.layer.from + kLeast || jamb > plan.layer.to - kLeast) continue;
      // To the middle of the pier, or short of the corner that is raised at its other end.
      double room = forward ? plan.layer.to - jamb : jamb - plan.layer.from;
      room *= kShare;
      const auto keepClear = [&](const Rect& other, double share) {
        if (other.z1 < z0 + kHair || other.z0 > top - kHair) return;
        const double gap = forward ? other.s0 - jamb : jamb - other.s1;
        if (gap > -kHair) room = std::min(room, gap * share);
      };
      for (const Rect& other : plan.openings) keepClear(other, kShare);
      for (const LintelPlan& lintel : plan.lintels)
        if (!lintel.ownStage) keepClear(lintel.rect, kShare);
      for (const Rect& corner : corners) keepClear(corner, 1);
      const std::vector<Rect> lead = racked(laid, {jamb, forward, room - module}, z0, top, module);
      leads.insert(leads.end(), lead.begin(), lead.end());
    }
  }
  return leads;
}

double freeLength(const LeafPlan& plan, bool fromStart, double z0, double z1) {
  double free = plan.layer.to - plan.layer.from;
  const Rect band{plan.layer.from - 2, z0, plan.layer.to + 2, z1};
  const auto keepClear = [&](const Rect& hole) {
    if (!hole.overlaps(band)) return;
    free = std::min(free, fromStart ? hole.s0 - plan.layer.from : plan.layer.to - hole.s1);
  };
  for (const LintelPlan& lintel : plan.lintels) {
    const Rect& r = lintel.rect;
    if (!lintel.ownStage) keepClear({r.s0 - kToBed, r.z0, r.s1 + kToBed, r.z1});
  }
  for (const PadstonePlan& padstone : plan.padstones) {
    const Rect& r = padstone.rect;
    keepClear({r.s0 - kToBed, r.z0, r.s1 + kToBed, r.z1});
  }
  for (const VentPlan& vent : plan.vents) keepClear(vent.rect);
  return free;
}

}  // namespace model
