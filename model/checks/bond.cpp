// Whether piers, and walls without openings, come out in whole and half bricks.
#include <algorithm>
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
  const double tenths = std::round(std::fabs(size.over) * 1e4) / 1e4;
  return lengthWords(tenths) + (size.over > 0 ? " over " : " short of ") +
         std::to_string(size.halfBricks) + " half bricks";
}

// Walls whose bond, begun at both ends, does not meet.
void tellPatterns(const Checking& check, const DryBond& bond) {
  std::vector<std::string> found;
  for (const WallBond& wall : bond.walls) {
    const bool broken = std::any_of(wall.stretches.begin(), wall.stretches.end(),
                                    [](const DryStretch& stretch) { return stretch.fit.pattern; });
    if (broken) found.push_back(check.settingOut.walls[wall.wall].name);
  }
  if (found.empty()) return;
  check.warning("walls.bond", "the bond begun at both ends does not meet in wall " + listed(found),
                "it is broken once in each, under an opening where there is one; `stringcourse "
                "bond` shows the small moves after which it meets; the drawing decides");
}

}  // namespace

void checkBondKind(const Checking& check) {
  const BrickSizes sizes = brickSizes(check.job);
  if (sizes.bond == BondKind::Stack)
    check.warning("walls.bond", "in a stack the joints stand over one another and nothing laps",
                  "ask the designer how it is reinforced and tied");
  if (sizes.bond == BondKind::Stretcher && sizes.halfBricksThick() > 1)
    check.warning("walls.bond",
                  "in stretcher bond nothing ties the rows of an outer leaf of " +
                      lengthWords(sizes.thickness) + " together",
                  "lay it in english or flemish bond, or ask the designer how they are tied");
}

// One line for all of them. Openings have a line of their own.
void checkBond(const Checking& check) {
  const DryBond bond = deriveDryBond(check.job, check.settingOut);
  tellPatterns(check, bond);
  std::vector<std::string> found;
  for (const WallBond& wall : bond.walls) {
    for (const DryStretch& stretch : wall.stretches) {
      if (stretch.fit.regular || stretch.fit.pattern || stretch.opening) continue;
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
