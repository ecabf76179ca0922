// Stretcher bond: each stretch comes out in half bricks or is broken by itself.
#include <algorithm>
#include <optional>

#include "model/bond/bond_pattern.h"
#include "model/bond/fit_bond.h"

namespace model {
namespace {

StretchEnds endsOf(const DryStretch& stretch) {
  return stretch.opening ? StretchEnds::UnderOpening : StretchEnds::Pier;
}

bool oddWall(const WallBond& bond) {
  bool odd = false;
  for (const DryStretch& stretch : bond.stretches) odd = odd != stretch.fit.odd;
  return odd;
}

// Going round, a wall whose length is an even number of half bricks hands on the other course: the
// corners come out when such walls are even in number.
bool closes(const DryBond& bond) {
  const auto even = std::count_if(bond.walls.begin(), bond.walls.end(),
                                  [](const WallBond& w) { return !oddWall(w); });
  return even % 2 == 0;
}

// Beyond a movement joint the bond may begin with either course.
bool closesAtMovementJoint(DryBond& bond) {
  for (WallBond& wall : bond.walls) {
    for (DryStretch& stretch : wall.stretches) {
      if (!stretch.movement) continue;
      stretch.fit.odd = !stretch.fit.odd;
      return true;
    }
  }
  return false;
}

// Breaks the bond in the one stretch where it costs least: under an opening rather than in a pier,
// and the longest of those.
void closeRound(DryBond& bond) {
  struct Best {
    std::array<size_t, 2> place;
    StretchFit fit;
    bool broken, under;
    double length;
  };
  std::optional<Best> best;
  const auto better = [&](const Best& a, const Best& b) {
    if (a.broken != b.broken) return a.broken;  // broken already
    if (a.fit.shortCut != b.fit.shortCut) return b.fit.shortCut;
    const bool lapA = a.fit.lap > bond.sizes.leastLap();
    const bool lapB = b.fit.lap > bond.sizes.leastLap();
    if (lapA != lapB) return lapA;
    if (a.under != b.under) return a.under;
    return a.length > b.length + 1e-9;
  };
  for (size_t w = 0; w < bond.walls.size(); ++w) {
    for (size_t k = 0; k < bond.walls[w].stretches.size(); ++k) {
      const DryStretch& stretch = bond.walls[w].stretches[k];
      const double length = stretch.to - stretch.from;
      const Best other{{w, k},
                       fitStretch(bond.sizes, length, !stretch.fit.odd, endsOf(stretch)),
                       !stretch.fit.regular,
                       stretch.opening.has_value(),
                       length};
      if (!best || better(other, *best)) best = other;
    }
  }
  if (!best) return;
  DryStretch& stretch = bond.walls[best->place[0]].stretches[best->place[1]];
  if (stretch.fit.regular) bond.brokenToClose.push_back(best->place);
  stretch.fit = best->fit;
}

// The joint in line with the jamb between a pier and what lies under the opening beside it, or at a
// corner's edge of a movement joint.
CrossJoint stationJoint(const BrickSizes& sizes, const DryStretch& before,
                        const DryStretch& after) {
  const double width = after.opening    ? after.fit.joint
                       : before.opening ? before.fit.joint
                                        : sizes.joint;
  const double aside = (width - sizes.joint) / 2;
  return {after.from + (after.opening ? aside : -aside), width};
}

// `course`: the one with a joint at the wall's first station, in which the wall runs through.
void placeJoints(const BrickSizes& sizes, WallBond& bond, size_t course) {
  bond.joints.assign(coursesOf(sizes.bond), {});
  for (size_t i = 0; i < bond.stretches.size(); ++i) {
    const DryStretch& stretch = bond.stretches[i];
    if (i > 0) bond.joints[course].push_back(stationJoint(sizes, bond.stretches[i - 1], stretch));
    for (size_t k = 0; k < 2; ++k)
      for (const CrossJoint& joint : stretch.fit.joints[k])
        bond.joints[course ^ k].push_back({stretch.from + joint.at, joint.width});
    if (stretch.fit.odd) course ^= 1;
  }
}

}  // namespace

std::vector<size_t> throughCourses(const DryBond& bond) {
  std::vector<size_t> courses;
  size_t course = 0;
  for (const WallBond& wall : bond.walls) {
    courses.push_back(course);
    // Where this wall runs through at its end, the next one butts against it.
    course = course ^ (wall.odd ? 1u : 0u) ^ 1u;
  }
  return courses;
}

void fitStretcherBond(DryBond& bond) {
  for (WallBond& wall : bond.walls) {
    for (DryStretch& stretch : wall.stretches) {
      if (stretch.movement) {
        stretch.fit = StretchFit{};
        stretch.fit.regular = true;
        stretch.fit.joint = stretch.to - stretch.from + bond.sizes.joint;
        stretch.fit.lap = bond.sizes.half();
      } else {
        stretch.fit = fitStretch(bond.sizes, stretch.to - stretch.from, endsOf(stretch));
      }
    }
  }
  if (!closes(bond) && !closesAtMovementJoint(bond)) closeRound(bond);
  for (WallBond& wall : bond.walls) wall.odd = oddWall(wall);
  const std::vector<size_t> through = throughCourses(bond);
  for (size_t i = 0; i < bond.walls.size(); ++i) placeJoints(bond.sizes, bond.walls[i], through[i]);
}

}  // namespace model
