#include "model/bond/wall_corbel.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace model {

namespace {

constexpr double kHair = 1e-6;
constexpr double kSame = 0.003;        // metres: nobody cuts less
constexpr double kLeastPiece = 0.040;  // a shorter one is not cut

using Pieces = std::vector<LaidPiece>;

// Two alike in place of one that became longer than a brick.
void halve(const BrickSizes& sizes, Pieces& pieces, size_t i) {
  const LaidPiece whole = pieces[i];
  if (whole.length() < sizes.brick + kSame) return;
  LaidPiece rest = whole;
  pieces[i].to = whole.from + (whole.length() - sizes.joint) / 2;
  rest.from = pieces[i].to + sizes.joint;
  pieces[i].header = rest.header = false;
  pieces.insert(pieces.begin() + static_cast<std::ptrdiff_t>(i) + 1, rest);
}

// The end of the course at the wall's start comes out by so much.
void turnStart(const BrickSizes& sizes, double by, Pieces& pieces) {
  pieces[0].from -= by;
  const bool alone = pieces.size() == 1 || pieces[1].from - pieces[0].to > 2 * sizes.joint;
  if (alone) return halve(sizes, pieces, 0);
  pieces[0].to -= by;
  LaidPiece& next = pieces[1];
  next.from -= by;
  next.closer = false;
  next.header = next.header && std::fabs(by) < kSame;
  if (next.length() >= kLeastPiece) return halve(sizes, pieces, 1);
  pieces[0].to = next.to;
  pieces[0].header = false;
  pieces.erase(pieces.begin() + 1);
  halve(sizes, pieces, 0);
}

// A brick begins at the station, where that leaves no sliver.
void stopAt(const BrickSizes& sizes, double station, Pieces& pieces) {
  for (size_t i = 0; i < pieces.size(); ++i) {
    const LaidPiece whole = pieces[i];
    if (whole.from > station - sizes.joint - kLeastPiece || whole.to < station + kLeastPiece)
      continue;
    LaidPiece rest = whole;
    pieces[i].to = station - sizes.joint;
    rest.from = station;
    for (LaidPiece* piece : {&pieces[i], &rest}) piece->header = piece->closer = false;
    pieces.insert(pieces.begin() + static_cast<std::ptrdiff_t>(i) + 1, rest);
    return;
  }
}

// The same course walked along the other way.
void turnRound(double length, Pieces& pieces) {
  std::reverse(pieces.begin(), pieces.end());
  for (LaidPiece& piece : pieces) {
    const double from = length - piece.to;
    piece.to = length - piece.from;
    piece.from = from;
  }
}

}  // namespace

void shapeCorbelCourse(const SettingOut& settingOut, const DryBond& bond, size_t wall,
                       const CorbelPlan& corbel, int course, Pieces& pieces) {
  if (pieces.empty() || !corbel.holds(course)) return;
  const WallLine& line = settingOut.walls[wall];
  for (const bool atStart : {true, false}) {
    if (!atStart) turnRound(line.length, pieces);
    const Corner& corner = settingOut.corners[atStart ? line.from : line.to];
    const double out = corner.angle < std::numbers::pi ? corbel.out(course) : -corbel.out(course);
    if (corbel.turns[atStart ? 0 : 1])
      turnStart(bond.sizes, out, pieces);
    else
      stopAt(bond.sizes, atStart ? corbel.from : line.length - corbel.to, pieces);
    if (!atStart) turnRound(line.length, pieces);
  }
}

std::optional<Rect> corbelRect(const CorbelPlan& corbel, const LaidLeaf& leaf, size_t band) {
  const CourseBand& course = leaf.bands[band];
  if (!corbel.holds(course.number)) return std::nullopt;
  Rect rect{1e300, course.bottom, -1e300, course.top};
  for (size_t i = leaf.firstOf[band]; i < leaf.firstOf[band + 1]; ++i) {
    const MasonryUnit& unit = leaf.units[i];
    if (unit.s0 < corbel.from - kHair || unit.s1 > corbel.to + kHair) continue;
    rect.s0 = std::min(rect.s0, unit.s0);
    rect.s1 = std::max(rect.s1, unit.s1);
  }
  if (rect.s1 <= rect.s0) return std::nullopt;
  if (corbel.turns[0]) rect.s0 = corbel.from;
  if (corbel.turns[1]) rect.s1 = corbel.to;
  return rect;
}

}  // namespace model
