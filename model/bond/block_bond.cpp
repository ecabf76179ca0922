#include "model/bond/block_bond.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace model {
namespace {

constexpr double kSquare = 0.01;  // radians: drawings are no nearer

bool isSquare(const Corner& corner) {
  const double quarter = std::numbers::pi / 2;
  return std::fabs(corner.angle - quarter) < kSquare ||
         std::fabs(corner.angle - 3 * quarter) < kSquare;
}

size_t everyOther(int course) { return static_cast<size_t>(((course % 2) + 2) % 2); }

// By how much the joints of a course lie on from those of course 0.
double shiftOf(BlockBondKind kind, int course, double module) {
  switch (kind) {
    case BlockBondKind::Half:
      return static_cast<double>(everyOther(course)) * module / 2;
    case BlockBondKind::Third:
      return ((course % 3) + 3) % 3 * module / 3;
    case BlockBondKind::Stack:
      return 0;
  }
  return 0;
}

// A mitre longer than a block leaves nothing of its back: the angle unit takes in the next.
void reachBackAtStart(double least, double shorter, std::vector<LaidPiece>& pieces) {
  while (pieces.size() > 1 && pieces[0].length() - shorter < least) {
    pieces[1].from = pieces[0].from;
    pieces.erase(pieces.begin());
  }
}

void reachBackAtEnd(double least, double shorter, std::vector<LaidPiece>& pieces) {
  while (pieces.size() > 1 && pieces.back().length() - shorter < least) {
    pieces[pieces.size() - 2].to = pieces.back().to;
    pieces.pop_back();
  }
}

}  // namespace

BlockBond blockBondRound(const WallBuildUp& walls, const WallRing& ring, double outer,
                         double inner) {
  BlockBond bond;
  bond.kind = walls.blockBond;
  bond.limits.unit = walls.blockLength;
  bond.limits.joint = walls.joint;
  bond.limits.leastCut = (walls.blockLength + walls.joint) / 4 - walls.joint;
  const double joint = walls.joint;
  for (size_t i = 0; i < ring.walls.size(); ++i) {
    const WallLine& line = ring.walls[i];
    const WallLayer layer = layerIn(ring.walls, i, outer, inner);
    BlockWall wall;
    if (isSquare(ring.corners[line.from])) {
      wall.start = {std::min(layer.startFront, layer.startBack), layer.from + joint};
    } else {
      wall.mitredStart = true;
      wall.shortStart = layer.startBack - layer.startFront;
      wall.start = {layer.startFront + joint / 2, layer.startFront + joint / 2};
    }
    if (isSquare(ring.corners[line.to])) {
      wall.end = {layer.to - joint, std::max(layer.endFront, layer.endBack)};
    } else {
      wall.mitredEnd = true;
      wall.shortEnd = layer.endFront - layer.endBack;
      wall.end = {layer.endFront - joint / 2, layer.endFront - joint / 2};
    }
    wall.grid = wall.start[0] - joint / 2;
    bond.walls.push_back(wall);
  }
  return bond;
}

BlockBond deriveBlockBond(const Job& job, const SettingOut& settingOut) {
  const double front = settingOut.faceDistances.innerLeafFront;
  return blockBondRound(job.walls, {settingOut.corners, settingOut.walls}, front,
                        front + job.walls.innerLeaf);
}

std::vector<LaidPiece> layBlocks(const BlockBond& bond, size_t wall, int course,
                                 const std::vector<Span>& open) {
  const BlockWall& own = bond.walls[wall];
  const double module = bond.limits.unit + bond.limits.joint;
  const double from = own.start[everyOther(course)], to = own.end[everyOther(course)];
  const double first = own.grid + shiftOf(bond.kind, course, module);
  std::vector<CrossJoint> joints;
  for (double k = std::ceil((from - first) / module); first + k * module < to; ++k)
    joints.push_back({first + k * module, bond.limits.joint});
  std::vector<LaidPiece> all;
  for (const Span& part : solidParts(from, to, open)) {
    std::vector<LaidPiece> laid = piecesBetween(joints, part);
    shareSlivers(bond.limits, laid);
    splitLongOnes(bond.limits, laid);
    if (own.mitredStart && part[0] == from) {
      reachBackAtStart(bond.limits.leastCut, own.shortStart, laid);
      laid.front().special = true;
    }
    if (own.mitredEnd && part[1] == to) {
      reachBackAtEnd(bond.limits.leastCut, own.shortEnd, laid);
      laid.back().special = true;
    }
    all.insert(all.end(), laid.begin(), laid.end());
  }
  return all;
}

}  // namespace model
