// Cellar walls that are laid and not cast: their leaves, and the day's rises and lifts of concrete
// in which they are built.
#pragma once

#include <string>
#include <vector>

#include "model/bond/plain_leaf.h"
#include "model/settingout/wall_ring.h"

namespace model {

struct CellarLeaf {
  std::string name;             // "outer leaf"
  double outer = 0, inner = 0;  // metres inside the outer face of the walls
  BlockBond bond;
};

// One height of blockwork that goes up in a day, or of concrete that is filled in one go.
struct CellarRise {
  double bottom = 0, top = 0;  // levels
};

struct CellarLeaves {
  WallRing ring;
  std::vector<CellarLeaf> leaves;  // from outside in; none when the walls are cast
  double foot = 0, top = 0;        // levels: of the slab, and of the floor over the walls

  WallLayer layer(size_t wall, size_t leaf) const;  // points into `ring`
  LaidLeaf laid(const WallBuildUp& walls, size_t wall, size_t leaf) const;
  double height() const { return top - foot; }
};

CellarLeaves cellarLeaves(const Job& job, const SettingOut& settingOut);

// In whole courses, none higher than the day's limit but for a course that is.
std::vector<CellarRise> cellarRises(const Job& job, const CellarLeaves& cellar);
// Of the concrete between two leaves, all alike and none higher than that limit; the designer may
// ask for lower ones.
std::vector<CellarRise> cellarFillLifts(const Job& job, const CellarLeaves& cellar);

}  // namespace model
