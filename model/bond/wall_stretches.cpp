#include "model/bond/wall_stretches.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "model/walls/leaf_plan.h"
#include "model/walls/movement_joints.h"

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

}  // namespace

CornerLay cornerLay(const BrickSizes& sizes, const Corner& corner) {
  const double quarter = std::numbers::pi / 2;
  // Only the outer half brick of a thicker leaf turns the corner as a half-brick leaf does.
  const bool thick = sizes.halfBricksThick() > 1;
  const double turned = thick ? sizes.halfBrick() : sizes.thickness;
  if (std::fabs(corner.angle - quarter) < kSquare)
    return {-sizes.joint / 2, 0, turned + sizes.joint, false};
  if (std::fabs(corner.angle - 3 * quarter) < kSquare)
    return {-turned - sizes.joint / 2, -sizes.thickness, sizes.joint, false};
  // Angle bricks: a long leg one way and a short one the other, turned in the next course. At a
  // sharp corner both are longer, so that the short one has a back.
  const double lost = sizes.thickness / std::tan(corner.angle / 2);
  const double shortLeg = (1 - kCornerLegs) * sizes.module() - sizes.joint;
  const double longer = lost > shortLeg ? lost - shortLeg + kLeastBack : 0;
  return {longer + kCornerLegs * sizes.module() - sizes.joint / 2 - sizes.module(), 0, 0, true};
}

WallBond stretchesOf(const BrickSizes& sizes, const Job& job, const SettingOut& out, size_t wall) {
  WallBond bond;
  bond.wall = wall;
  for (const MovementGap& gap : movementJointsIn(job, out, wall))
    bond.straight.push_back({gap.from, gap.to});
  const WallLine& line = out.walls[wall];
  std::vector<size_t> others;
  const std::vector<size_t> setting = settingOpenings(sizes, out, wall, others);
  for (const size_t i : others) bond.offBond.push_back({i, 0, 0});
  const CornerLay start = cornerLay(sizes, out.corners[line.from]);
  const CornerLay end = cornerLay(sizes, out.corners[line.to]);
  double at = start.station;
  std::string name = "corner " + out.corners[line.from].letter;
  const auto put = [&](double to, std::optional<size_t> under, const std::string& last) {
    bond.stretches.push_back({at, to, under, false, name, last, {}});
    at = to;
    name = last;
  };
  size_t straight = 0;
  const auto putStraight = [&](double before) {
    for (; straight < bond.straight.size() && bond.straight[straight][0] < before; ++straight) {
      put(bond.straight[straight][0] + sizes.joint / 2, std::nullopt, "movement joint");
      put(bond.straight[straight][1] - sizes.joint / 2, std::nullopt, "movement joint");
      bond.stretches.back().movement = true;
    }
  };
  for (const size_t i : setting) {
    const BuiltOpening& opening = out.openings[i];
    const std::string label = openingLabel(out, i);
    putStraight(opening.s0);
    put(opening.s0 + sizes.joint / 2, std::nullopt, label);
    put(opening.s1 - sizes.joint / 2, i, label);
  }
  putStraight(line.length);
  put(line.length - end.station, std::nullopt, "corner " + out.corners[line.to].letter);
  return bond;
}

}  // namespace model
