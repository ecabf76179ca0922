#include "model/bond/reveal.h"

#include <algorithm>
#include <cmath>

namespace model {
namespace {

constexpr double kOnJamb = 0.003;

double lapOver(const Neighbours& neighbours, double at) {
  double least = 1e9;
  for (const std::vector<CrossJoint>* joints : {&neighbours.over, &neighbours.under}) {
    const auto next =
        std::lower_bound(joints->begin(), joints->end(), at,
                         [](const CrossJoint& joint, double s) { return joint.at < s; });
    if (next != joints->end()) least = std::min(least, next->at - at);
    if (next != joints->begin()) least = std::min(least, at - (next - 1)->at);
  }
  return least;
}

}  // namespace

void mendReveal(const BrickSizes& sizes, const Neighbours& neighbours, bool atStart,
                std::vector<LaidPiece>& laid) {
  if (laid.size() < 2) return;
  const size_t i = atStart ? 0 : laid.size() - 2;  // the two that it is made of
  const LaidPiece first = laid[i], second = laid[i + 1];
  const LaidPiece& atJamb = atStart ? first : second;
  const double total = second.to - first.from;
  const double least = std::min(sizes.leastCut, sizes.halfBrick());
  if (atJamb.length() >= least - kOnJamb || first.special || second.special) return;
  // Of the piece at the jamb; the other gets the rest. 0: one piece.
  double best = -1, bestLap = -1;
  const auto consider = [&](double length) {
    const double rest = total - length - sizes.joint;
    if (length == 0) {
      if (total > sizes.brick + kOnJamb) return;
    } else if (rest < sizes.closer() - kOnJamb || rest > sizes.brick + kOnJamb) {
      return;
    }
    const double at =
        atStart ? first.from + length + sizes.joint / 2 : second.to - length - sizes.joint / 2;
    const double lap =
        length == 0 ? sizes.leastLap() : std::min(sizes.leastLap(), lapOver(neighbours, at));
    if (lap <= bestLap + kOnJamb) return;
    best = length;
    bestLap = lap;
  };
  consider(sizes.halfBrick());
  consider(3 * sizes.quarter() - sizes.joint);
  consider(0);
  consider((total - sizes.joint) / 2);
  if (best < 0) return;
  if (best == 0) {
    laid[i].to = second.to;
    laid.erase(laid.begin() + static_cast<std::ptrdiff_t>(i) + 1);
    return;
  }
  laid[i].to = atStart ? first.from + best : second.to - best - sizes.joint;
  laid[i + 1].from = laid[i].to + sizes.joint;
}

}  // namespace model
