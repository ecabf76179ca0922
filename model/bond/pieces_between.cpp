#include "model/bond/pieces_between.h"

#include <algorithm>
#include <cmath>

namespace model {
namespace {

constexpr double kHair = 1e-6;
constexpr double kLongestLeg = 1.6;  // units
constexpr double kOnJamb = 0.003;    // a joint this near to a jamb is the jamb's own

// Puts one or two pieces in place of bricks i and i + 1.
void share(const PieceLimits& limits, std::vector<LaidPiece>& laid, size_t i) {
  const double from = laid[i].from, to = laid[i + 1].to;
  if (to - from < limits.unit + kOnJamb) {
    laid[i].to = to;
    laid.erase(laid.begin() + static_cast<std::ptrdiff_t>(i) + 1);
    return;
  }
  const double middle = (from + to) / 2;
  laid[i] = {from, middle - limits.joint / 2};
  laid[i + 1] = {middle + limits.joint / 2, to};
}

}  // namespace

std::vector<Span> solidParts(double from, double to, std::vector<Span> open) {
  std::sort(open.begin(), open.end());
  std::vector<Span> parts;
  for (const Span& opening : open) {
    if (opening[1] <= from || opening[0] >= to) continue;
    if (opening[0] > from + kHair) parts.push_back({from, opening[0]});
    from = std::max(from, opening[1]);
  }
  if (to > from + kHair) parts.push_back({from, to});
  return parts;
}

std::vector<LaidPiece> piecesBetween(const std::vector<CrossJoint>& joints, const Span& part) {
  std::vector<LaidPiece> laid;
  double from = part[0];
  for (const CrossJoint& joint : joints) {
    const double left = joint.at - joint.width / 2, right = joint.at + joint.width / 2;
    if (left < part[0] + kOnJamb || right > part[1] - kOnJamb) continue;
    laid.push_back({from, left});
    from = right;
  }
  laid.push_back({from, part[1]});
  return laid;
}

void shareSlivers(const PieceLimits& limits, std::vector<LaidPiece>& laid) {
  const auto isShort = [&](const LaidPiece& brick) {
    return brick.length() < limits.leastCut - kOnJamb;
  };
  if (laid.size() > 1 && isShort(laid.front())) share(limits, laid, 0);
  if (laid.size() > 1 && isShort(laid.back())) share(limits, laid, laid.size() - 2);
}

void splitLongOnes(const PieceLimits& limits, std::vector<LaidPiece>& laid) {
  for (size_t i = 0; i < laid.size(); ++i) {
    const double length = laid[i].length();
    // The legs of angle bricks are made as long as their corner needs.
    if (length < (laid[i].special ? kLongestLeg : 1) * limits.unit + kOnJamb) continue;
    const double pieces =
        std::ceil((length + limits.joint) / ((limits.unit + limits.joint) + kOnJamb));
    const double step = (length + limits.joint) / pieces;
    laid[i].to = laid[i].from + step - limits.joint;
    LaidPiece rest = laid[i];
    rest.from += step;
    rest.to = laid[i].from + length;
    laid.insert(laid.begin() + static_cast<std::ptrdiff_t>(i) + 1, rest);
  }
}

}  // namespace model
