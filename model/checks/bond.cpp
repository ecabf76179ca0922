// Whether piers, and walls without openings, come out in whole and half bricks.
#include <cmath>

#include "model/bond/dry_bond.h"
#include "model/checks/parts.h"
#include "model/job/value_words.h"

namespace model {
namespace {

std::string between(const DryStretch& stretch, const WallLine& wall) {
  if (stretch.first.starts_with("corner ") && stretch.last.starts_with("corner "))
    return "wall " + wall.name;
  return stretch.first + " to " + stretch.last;
}

std::string over(const BrickSize& size) {
  return lengthWords(std::fabs(size.over)) + (size.over > 0 ? " over " : " short of ") +
         std::to_string(size.halfBricks) + " half bricks";
}

}  // namespace

// One line for all of them. Openings have a line of their own.
void checkBond(const Checking& check) {
  const DryBond bond = deriveDryBond(check.job, check.settingOut);
  std::vector<std::string> found;
  for (const WallBond& wall : bond.walls) {
    for (const DryStretch& stretch : wall.stretches) {
      if (stretch.fit.regular || stretch.opening) continue;
      found.push_back(between(stretch, check.settingOut.walls[wall.wall]) + " (" +
                      over(nearestBrickSize(bond.sizes, stretch.to - stretch.from)) + ")");
    }
  }
  if (found.empty()) return;
  check.warning(
      "outline.corners",
      "not in brick sizes, so that bricks are cut in the middle of it: " + listedApart(found),
      "`stringcourse bond` shows the cuts, and the small moves after which there are "
      "none; the drawing decides");
}

}  // namespace model
