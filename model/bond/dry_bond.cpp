#include "model/bond/dry_bond.h"

#include <cmath>

#include "model/bond/bond_pattern.h"
#include "model/bond/fit_bond.h"
#include "model/bond/wall_stretches.h"

namespace model {
namespace {

// `course`: the one in which the wall runs through at its first corner.
void placeEnds(const BrickSizes& sizes, const SettingOut& out, WallBond& bond, size_t course) {
  const WallLine& line = out.walls[bond.wall];
  const CornerLay start = cornerLay(sizes, out.corners[line.from]);
  const CornerLay end = cornerLay(sizes, out.corners[line.to]);
  bond.start.special = start.special;
  bond.end.special = end.special;
  const size_t last = course ^ (bond.odd ? 1u : 0u);
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

size_t courseOf(BondKind bond, int above) {
  const int period = static_cast<int>(coursesOf(bond));
  return static_cast<size_t>(((above % period) + period) % period);
}

DryBond deriveDryBond(const Job& job, const SettingOut& settingOut) {
  DryBond bond;
  bond.sizes = brickSizes(job);
  for (size_t wall = 0; wall < settingOut.walls.size(); ++wall)
    bond.walls.push_back(stretchesOf(bond.sizes, job, settingOut, wall));
  if (bond.sizes.bond == BondKind::Stretcher)
    fitStretcherBond(bond);
  else
    fitQuarterBond(bond);
  const std::vector<size_t> through = throughCourses(bond);
  for (size_t i = 0; i < bond.walls.size(); ++i) {
    WallBond& wall = bond.walls[i];
    placeEnds(bond.sizes, settingOut, wall, through[i]);
    for (OffBond& off : wall.offBond) {
      const BuiltOpening& opening = settingOut.openings[off.opening];
      off.atStart = toStation(wall, opening.s0 + bond.sizes.joint / 2);
      off.atEnd = toStation(wall, opening.s1 - bond.sizes.joint / 2);
    }
  }
  return bond;
}

}  // namespace model
