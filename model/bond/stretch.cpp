#include "model/bond/stretch.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace model {
namespace {

// Drawings are to the millimetre: what is nearer comes out.
constexpr double kRounding = 0.001;
constexpr double kHair = 1e-6;
constexpr int kMostTaken = 3;   // whole bricks given up for cut ones
constexpr int kMostPieces = 4;  // that take their place

// One course's way to fill its part of the stretch.
struct Filling {
  int left = 0;  // whole bricks before the cut ones
  int pieces = 0;
  double piece = 0;  // module of a cut one: with its joint
  int right = 0;
};

// What one of the two courses has between the middles of the bricks that straddle its ends.
struct Room {
  double from = 0, length = 0;
};

Room roomOf(const BrickSizes& sizes, double length, bool first, bool odd) {
  const bool jointAtEnd = first != odd;
  const double from = first ? 0 : sizes.half();
  return {from, length - from - (jointAtEnd ? 0 : sizes.half())};
}

std::vector<Filling> fillings(const BrickSizes& sizes, const Room& room, double leastCut) {
  std::vector<Filling> found;
  const int whole = static_cast<int>(std::floor((room.length + kRounding) / sizes.module()));
  for (int taken = 0; taken <= std::min(kMostTaken, std::max(0, whole)); ++taken) {
    const int left = std::max(0, whole - taken);
    const double gap = room.length - left * sizes.module();
    for (const int before : {left / 2, left / 2 + 1, left / 2 - 1}) {
      if (before < 0 || before > left) continue;
      if (std::fabs(gap) < kRounding) {
        found.push_back({before, 0, 0, left - before});
        continue;
      }
      for (int pieces = 1; pieces <= kMostPieces; ++pieces) {
        const double piece = gap / pieces;
        if (piece < leastCut + sizes.joint - kRounding) continue;
        if (piece > sizes.module() + kRounding) continue;
        found.push_back({before, pieces, piece, left - before});
      }
    }
  }
  return found;
}

std::vector<CrossJoint> jointsOf(const BrickSizes& sizes, const Room& room, const Filling& filling,
                                 double length) {
  std::vector<CrossJoint> joints;
  double at = room.from;
  const auto put = [&] {
    if (at > kRounding && at < length - kRounding) joints.push_back({at, sizes.joint});
  };
  put();
  const auto lay = [&](int count, double module) {
    for (int i = 0; i < count; ++i) {
      at += module;
      put();
    }
  };
  lay(filling.left, sizes.module());
  lay(filling.pieces, filling.piece);
  lay(filling.right, sizes.module());
  return joints;
}

// Least distance of a joint of one course from one of the other, both in ascending order; what is
// under `enough` is not measured further.
double lapOf(const std::vector<double>& one, const std::vector<double>& other, double enough) {
  double least = std::numeric_limits<double>::max();
  for (size_t i = 0, k = 0; i < one.size() && k < other.size() && least >= enough;) {
    least = std::min(least, std::fabs(one[i] - other[k]));
    one[i] < other[k] ? ++i : ++k;
  }
  return least;
}

int nearestHalves(const BrickSizes& sizes, double length, bool odd) {
  const double halves = length / sizes.half();
  const int nearest =
      2 * static_cast<int>(std::lround((halves - (odd ? 1 : 0)) / 2)) + (odd ? 1 : 0);
  return std::max(nearest, odd ? 1 : 2);
}

StretchFit regularFit(const BrickSizes& sizes, double length, bool odd, StretchEnds ends) {
  StretchFit fit;
  fit.odd = odd;
  fit.halfBricks = nearestHalves(sizes, length, odd);
  fit.over = length - fit.halfBricks * sizes.half();
  const double joints = jointsThatGive(fit.halfBricks, ends);
  fit.joint = joints > 0 ? sizes.joint + fit.over / joints : sizes.joint;
  fit.regular = std::fabs(fit.over) < kRounding ||
                (joints > 0 && fit.joint > sizes.least - kHair && fit.joint < sizes.most + kHair);
  if (!fit.regular) return fit;
  for (int i = 1; i < fit.halfBricks; ++i) {
    const double step = i * (sizes.brick + fit.joint) / 2;
    const double first = (sizes.joint - fit.joint) / 2;  // of the joint at the first station
    const double at = step + (ends == StretchEnds::Pier ? first : -first);
    fit.joints[i % 2].push_back({at, fit.joint});
  }
  fit.lap = sizes.half();
  return fit;
}

// A way to fill a course, with the places of its joints; the stations count for the course that has
// a joint there.
struct Filled {
  Filling filling;
  std::vector<CrossJoint> joints;
  std::vector<double> places;
};

std::vector<Filled> filled(const BrickSizes& sizes, double length, double leastCut, bool first,
                           bool odd) {
  const Room room = roomOf(sizes, length, first, odd);
  std::vector<Filled> all;
  for (const Filling& filling : fillings(sizes, room, leastCut)) {
    Filled one{filling, jointsOf(sizes, room, filling, length), {}};
    if (first) one.places.push_back(0);
    for (const CrossJoint& joint : one.joints) one.places.push_back(joint.at);
    if (first != odd) one.places.push_back(length);
    all.push_back(std::move(one));
  }
  return all;
}

// Of the ways to fill both courses the one with the fewest cut pieces that laps as it should; of
// equal ones that which laps most.
void breakBond(const BrickSizes& sizes, double length, double leastCut, StretchFit& best) {
  const std::vector<Filled> firsts = filled(sizes, length, leastCut, true, best.odd);
  const std::vector<Filled> seconds = filled(sizes, length, leastCut, false, best.odd);
  const Filled *one = nullptr, *two = nullptr;
  double bestLap = -1;
  for (int cuts = 0; cuts <= 2 * kMostPieces && bestLap < sizes.leastLap() - kRounding; ++cuts) {
    for (const Filled& a : firsts) {
      for (const Filled& b : seconds) {
        if (a.filling.pieces + b.filling.pieces != cuts) continue;
        const double lap = lapOf(a.places, b.places, bestLap);
        if (lap <= bestLap + kRounding) continue;
        bestLap = lap;
        one = &a;
        two = &b;
      }
    }
  }
  if (!one) return;
  best.joints = {one->joints, two->joints};
  const auto cutsOf = [&](const Filling& filling) {
    return std::vector<double>(static_cast<size_t>(filling.pieces), filling.piece - sizes.joint);
  };
  best.cuts = {cutsOf(one->filling), cutsOf(two->filling)};
  best.lap = bestLap;
}

}  // namespace

bool betterFit(const BrickSizes& sizes, const StretchFit& a, const StretchFit& b) {
  if (a.regular != b.regular) return a.regular;
  if (a.shortCut != b.shortCut) return b.shortCut;
  const auto lap = [&](const StretchFit& fit) { return std::min(fit.lap, sizes.leastLap()); };
  if (std::fabs(lap(a) - lap(b)) > kRounding) return lap(a) > lap(b);
  const auto cuts = [](const StretchFit& fit) { return fit.cuts[0].size() + fit.cuts[1].size(); };
  if (cuts(a) != cuts(b)) return cuts(a) < cuts(b);
  return a.lap > b.lap + kRounding;
}

BrickSize nearestBrickSize(const BrickSizes& sizes, double length) {
  const int halves = std::max(1, static_cast<int>(std::lround(length / sizes.half())));
  return {halves, length - halves * sizes.half()};
}

double jointsThatGive(int halfBricks, StretchEnds ends) {
  return std::max(0.0, halfBricks / 2.0 + (ends == StretchEnds::Pier ? -1 : 1));
}

StretchFit fitStretch(const BrickSizes& sizes, double length, bool odd, StretchEnds ends) {
  StretchFit fit = regularFit(sizes, length, odd, ends);
  if (fit.regular) return fit;
  fit.joint = sizes.joint;
  breakBond(sizes, length, sizes.leastCut, fit);
  if (!fit.joints[0].empty() || !fit.joints[1].empty()) return fit;
  // Too narrow for pieces that long: whatever fills it.
  fit.shortCut = true;
  breakBond(sizes, length, sizes.joint, fit);
  return fit;
}

StretchFit fitStretch(const BrickSizes& sizes, double length, StretchEnds ends) {
  StretchFit even = fitStretch(sizes, length, false, ends);
  StretchFit odd = fitStretch(sizes, length, true, ends);
  if (even.regular && odd.regular) return std::fabs(even.over) <= std::fabs(odd.over) ? even : odd;
  return betterFit(sizes, odd, even) ? odd : even;
}

}  // namespace model
