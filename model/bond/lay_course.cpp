// One course of a wall: bricks from joint to joint, cut where something is open.
#include <algorithm>
#include <cmath>

#include "model/bond/dry_bond.h"

namespace model {
namespace {

constexpr double kHair = 1e-6;
constexpr double kOnJamb = 0.003;  // a joint this near to a jamb is the jamb's own

using Length = std::array<double, 2>;

// What is left of [from, to] around the openings.
std::vector<Length> solidParts(double from, double to, std::vector<Length> open) {
  std::sort(open.begin(), open.end());
  std::vector<Length> parts;
  for (const Length& opening : open) {
    if (opening[1] <= from || opening[0] >= to) continue;
    if (opening[0] > from + kHair) parts.push_back({from, opening[0]});
    from = std::max(from, opening[1]);
  }
  if (to > from + kHair) parts.push_back({from, to});
  return parts;
}

std::vector<LaidPiece> fromJointToJoint(const std::vector<CrossJoint>& joints, const Length& part) {
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

// Puts one or two pieces in place of bricks i and i + 1.
void share(const BrickSizes& sizes, std::vector<LaidPiece>& laid, size_t i) {
  const double from = laid[i].from, to = laid[i + 1].to;
  if (to - from < sizes.brick + kOnJamb) {
    laid[i].to = to;
    laid.erase(laid.begin() + static_cast<std::ptrdiff_t>(i) + 1);
    return;
  }
  const double middle = (from + to) / 2;
  laid[i] = {from, middle - sizes.joint / 2};
  laid[i + 1] = {middle + sizes.joint / 2, to};
}

// No sliver beside a jamb: it and the brick next to it become one piece, or two alike.
void noSlivers(const BrickSizes& sizes, std::vector<LaidPiece>& laid) {
  const auto isShort = [&](const LaidPiece& brick) {
    return brick.length() < sizes.leastCut - kOnJamb;
  };
  if (laid.size() > 1 && isShort(laid.front())) share(sizes, laid, 0);
  if (laid.size() > 1 && isShort(laid.back())) share(sizes, laid, laid.size() - 2);
}

// Nothing longer than a brick, as where the next wall's leaf is thinner than half of one.
void noLongOnes(const BrickSizes& sizes, std::vector<LaidPiece>& laid) {
  for (size_t i = 0; i < laid.size(); ++i) {
    const double length = laid[i].length();
    if (length < sizes.brick + kOnJamb) continue;
    const double pieces = std::ceil((length + sizes.joint) / (sizes.module() + kOnJamb));
    const double step = (length + sizes.joint) / pieces;
    laid[i].to = laid[i].from + step - sizes.joint;
    laid.insert(laid.begin() + static_cast<std::ptrdiff_t>(i) + 1,
                {laid[i].from + step, laid[i].from + length});
  }
}

}  // namespace

std::vector<LaidPiece> layCourse(const DryBond& bond, size_t wall, int above,
                                 const std::vector<std::array<double, 2>>& open) {
  const WallBond& own = bond.walls[wall];
  const size_t course = courseParity(above);
  std::vector<LaidPiece> all;
  for (const Length& part : solidParts(own.start.face[course], own.end.face[course], open)) {
    std::vector<LaidPiece> laid = fromJointToJoint(own.joints[course], part);
    const bool atStart = own.start.special && part[0] == own.start.face[course];
    const bool atEnd = own.end.special && part[1] == own.end.face[course];
    // A short leg of an angle brick is no sliver.
    if (atStart) laid.front().special = true;
    if (atEnd) laid.back().special = true;
    if (!atStart && !atEnd) noSlivers(bond.sizes, laid);
    noLongOnes(bond.sizes, laid);
    all.insert(all.end(), laid.begin(), laid.end());
  }
  return all;
}

}  // namespace model
