#include "model/bond/toothing.h"

#include <algorithm>
#include <cmath>

namespace model {

namespace {

constexpr double kAtEnd = 0.003;  // metres
constexpr int kBlock = 3;         // courses of a block
constexpr double kLeast = 0.020;  // of a piece by itself: less is made up in mortar

// Is this the course in which the wall runs through at its end that meets the building?
bool runsThrough(const DryBond& bond, const JunctionPlan& plan, int course) {
  const WallBond& wall = bond.walls[plan.wall];
  return (plan.atStart ? wall.start : wall.end).through[courseParity(course)];
}

// One or two pieces, alike, in place of one that became longer than a brick.
void split(const BrickSizes& sizes, std::vector<LaidPiece>& pieces, size_t i) {
  const LaidPiece whole = pieces[i];
  if (whole.length() < sizes.brick + kAtEnd) return;
  const double half = (whole.length() - sizes.joint) / 2;
  pieces[i].to = whole.from + half;
  LaidPiece rest = whole;
  rest.from = pieces[i].to + sizes.joint;
  pieces[i].header = rest.header = false;
  pieces.insert(pieces.begin() + static_cast<std::ptrdiff_t>(i) + 1, rest);
}

}  // namespace

bool Toothing::holds(const Job& job, const DryBond& bond, int course) const {
  if (course < 0 || course > lastCourse) return false;
  if (job.junctions[plan.junction].kind == JunctionKind::Toothed)
    return runsThrough(bond, plan, course);
  // A block begins and ends with a course that runs through.
  const int first = runsThrough(bond, plan, 0) ? 0 : 1;
  const int along = course - first, from = along - along % (2 * kBlock);
  return along >= 0 && along % (2 * kBlock) < kBlock && first + from + kBlock - 1 <= lastCourse;
}

std::vector<Toothing> toothingsOf(const Job& job, const SettingOut& settingOut, size_t wall) {
  std::vector<Toothing> found;
  for (const JunctionPlan& plan : junctionPlans(job, settingOut)) {
    const WallJunction& junction = job.junctions[plan.junction];
    if (plan.wall != wall || junction.kind == JunctionKind::StarterTies) continue;
    Toothing toothing;
    toothing.plan = plan;
    toothing.deep = plan.gap + junction.pocket + job.walls.joint;
    toothing.lastCourse =
        static_cast<int>(std::floor((plan.top - plan.low) / job.walls.course() + 1e-6)) - 1;
    found.push_back(toothing);
  }
  return found;
}

void toothPieces(const Job& job, const DryBond& bond, const Toothing& toothing, int course,
                 double wallLength, std::vector<LaidPiece>& pieces) {
  if (pieces.empty() || !toothing.holds(job, bond, course)) return;
  const BrickSizes& sizes = bond.sizes;
  const bool atStart = toothing.plan.atStart;
  const double in = toothing.deep - sizes.joint;  // of the brick, from the end of the leaf
  const double end = atStart ? 0 : wallLength;
  if (!runsThrough(bond, toothing.plan, course)) {
    LaidPiece piece;
    piece.from = atStart ? -in : end + sizes.joint;
    piece.to = atStart ? -sizes.joint : end + in;
    if (piece.length() < kLeast) return;
    pieces.insert(atStart ? pieces.begin() : pieces.end(), piece);
    return;
  }
  const size_t i = atStart ? 0 : pieces.size() - 1;
  LaidPiece& last = pieces[i];
  if (last.special || std::fabs((atStart ? last.from : last.to) - end) > kAtEnd) return;
  if (atStart)
    last.from -= in;
  else
    last.to += in;
  last.closer = false;
  split(sizes, pieces, i);
}

}  // namespace model
