#include "model/bond/dry_bond.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

#include "model/walls/leaf_plan.h"

namespace model {
namespace {

constexpr double kSquare = 0.01;      // radians: drawings are no nearer
constexpr double kSameJamb = 0.001;   // openings over one another
constexpr double kLeastBack = 0.020;  // metres
constexpr double kCornerLegs = 0.75;  // of a module: the long leg of an angle brick. From memory.

// The openings of a wall that set its bond, along the wall.
std::vector<size_t> settingOpenings(const BrickSizes& sizes, const SettingOut& out, size_t wall,
                                    std::vector<size_t>& others) {
  std::vector<size_t> here;
  for (size_t i = 0; i < out.openings.size(); ++i)
    if (out.openings[i].wall == wall) here.push_back(i);
  std::stable_sort(here.begin(), here.end(), [&](size_t a, size_t b) {
    return out.openings[a].storey < out.openings[b].storey;
  });
  std::vector<size_t> chosen;
  const double room = 2 * sizes.module();
  const auto fits = [&](size_t i) {
    const BuiltOpening& one = out.openings[i];
    return std::all_of(chosen.begin(), chosen.end(), [&](size_t k) {
      const BuiltOpening& other = out.openings[k];
      if (other.storey == one.storey) return true;
      for (const double a : {one.s0, one.s1})
        for (const double b : {other.s0, other.s1})
          if (std::fabs(a - b) < room) return false;
      return one.s1 < other.s0 || one.s0 > other.s1;
    });
  };
  const auto over = [&](size_t i) {
    return std::any_of(chosen.begin(), chosen.end(), [&](size_t k) {
      return std::fabs(out.openings[k].s0 - out.openings[i].s0) < kSameJamb &&
             std::fabs(out.openings[k].s1 - out.openings[i].s1) < kSameJamb;
    });
  };
  for (const size_t i : here) {
    if (over(i)) continue;
    (fits(i) ? chosen : others).push_back(i);
  }
  std::sort(chosen.begin(), chosen.end(),
            [&](size_t a, size_t b) { return out.openings[a].s0 < out.openings[b].s0; });
  return chosen;
}

// A corner as one wall meets it, measured along that wall from the corner into it.
struct CornerLay {
  double station = 0;  // first one: that of the course in which the wall runs through
  double through = 0;  // where its brickwork begins then
  double butting = 0;  // and in the other course
  bool special = false;
};

CornerLay cornerLay(const BrickSizes& sizes, const Corner& corner) {
  const double quarter = std::numbers::pi / 2;
  if (std::fabs(corner.angle - quarter) < kSquare)
    return {-sizes.joint / 2, 0, sizes.thickness + sizes.joint, false};
  if (std::fabs(corner.angle - 3 * quarter) < kSquare)
    return {-sizes.thickness - sizes.joint / 2, -sizes.thickness, sizes.joint, false};
  // Angle bricks: a long leg one way and a short one the other, turned in the next course. At a
  // sharp corner both are longer, so that the short one has a back.
  const double lost = sizes.thickness / std::tan(corner.angle / 2);
  const double shortLeg = (1 - kCornerLegs) * sizes.module() - sizes.joint;
  const double longer = lost > shortLeg ? lost - shortLeg + kLeastBack : 0;
  return {longer + kCornerLegs * sizes.module() - sizes.joint / 2 - sizes.module(), 0, 0, true};
}

WallBond stretchesOf(const BrickSizes& sizes, const SettingOut& out, size_t wall) {
  WallBond bond;
  bond.wall = wall;
  const WallLine& line = out.walls[wall];
  std::vector<size_t> others;
  const std::vector<size_t> setting = settingOpenings(sizes, out, wall, others);
  for (const size_t i : others) bond.offBond.push_back({i, 0, 0});
  const CornerLay start = cornerLay(sizes, out.corners[line.from]);
  const CornerLay end = cornerLay(sizes, out.corners[line.to]);
  double at = start.station;
  std::string name = "corner " + out.corners[line.from].letter;
  const auto put = [&](double to, std::optional<size_t> under, const std::string& last) {
    bond.stretches.push_back({at, to, under, name, last, {}});
    at = to;
    name = last;
  };
  for (const size_t i : setting) {
    const BuiltOpening& opening = out.openings[i];
    const std::string label = openingLabel(out, i);
    put(opening.s0 + sizes.joint / 2, std::nullopt, label);
    put(opening.s1 - sizes.joint / 2, i, label);
  }
  put(line.length - end.station, std::nullopt, "corner " + out.corners[line.to].letter);
  return bond;
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
                       fitStretch(bond.sizes, length, !stretch.fit.odd),
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

// `course`: the one with a joint at the wall's first station, in which the wall runs through.
void placeJoints(const BrickSizes& sizes, WallBond& bond, size_t course) {
  for (const DryStretch& stretch : bond.stretches) {
    if (&stretch != &bond.stretches.front())
      bond.joints[course].push_back({stretch.from, sizes.joint});
    for (size_t k = 0; k < 2; ++k)
      for (const CrossJoint& joint : stretch.fit.joints[k])
        bond.joints[course ^ k].push_back({stretch.from + joint.at, joint.width});
    if (stretch.fit.odd) course ^= 1;
  }
}

void placeEnds(const BrickSizes& sizes, const SettingOut& out, WallBond& bond, size_t course) {
  const WallLine& line = out.walls[bond.wall];
  const CornerLay start = cornerLay(sizes, out.corners[line.from]);
  const CornerLay end = cornerLay(sizes, out.corners[line.to]);
  bond.start.special = start.special;
  bond.end.special = end.special;
  const size_t last = course ^ (oddWall(bond) ? 1 : 0);
  for (size_t k = 0; k < 2; ++k) {
    bond.start.through[k] = k == course;
    bond.end.through[k] = k == last;
    bond.start.face[k] = k == course ? start.through : start.butting;
    bond.end.face[k] = line.length - (k == last ? end.through : end.butting);
  }
}

// To the station nearest to a jamb of an opening that does not set the bond.
double toStation(const WallBond& bond, double station) {
  double least = 1e300;
  const auto look = [&](double at) {
    if (std::fabs(at - station) < std::fabs(least)) least = at - station;
  };
  for (const auto& joints : bond.joints)
    for (const CrossJoint& joint : joints) look(joint.at);
  return least;
}

}  // namespace

DryBond deriveDryBond(const Job& job, const SettingOut& settingOut) {
  DryBond bond;
  bond.sizes = brickSizes(job);
  for (size_t wall = 0; wall < settingOut.walls.size(); ++wall) {
    bond.walls.push_back(stretchesOf(bond.sizes, settingOut, wall));
    for (DryStretch& stretch : bond.walls.back().stretches)
      stretch.fit = fitStretch(bond.sizes, stretch.to - stretch.from);
  }
  if (!closes(bond)) closeRound(bond);
  size_t course = 0;
  for (WallBond& wall : bond.walls) {
    placeJoints(bond.sizes, wall, course);
    placeEnds(bond.sizes, settingOut, wall, course);
    for (OffBond& off : wall.offBond) {
      const BuiltOpening& opening = settingOut.openings[off.opening];
      off.atStart = toStation(wall, opening.s0 + bond.sizes.joint / 2);
      off.atEnd = toStation(wall, opening.s1 - bond.sizes.joint / 2);
    }
    // Where this wall runs through at its end, the next one butts against it.
    course = wall.end.through[0] ? 1 : 0;
  }
  return bond;
}

}  // namespace model
