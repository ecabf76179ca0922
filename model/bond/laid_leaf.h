// A leaf of a wall unit by unit: every course from the concrete to the top, round openings and
// lintels, cut where nothing else comes out.
#pragma once

#include <vector>

#include "model/bond/block_bond.h"
#include "model/bond/dry_bond.h"
#include "model/bond/masonry_unit.h"
#include "model/walls/leaf_plan.h"

namespace model {

// How all leaves of a building are bonded.
struct LeafBonds {
  DryBond outer;
  BlockBond inner;
};

LeafBonds deriveLeafBonds(const Job& job, const SettingOut& settingOut);

// The height of one course with its bed joint, which lies under it.
struct CourseBand {
  double bottom = 0, top = 0;
  int number = 0;  // over the damp course, from 0; below it from -1 down
};

struct LaidLeaf {
  UnitFrame frame;
  std::vector<CourseBand> bands;   // bottom first
  std::vector<MasonryUnit> units;  // band by band, along the wall; what is cut in height comes last
  std::vector<size_t> firstOf;     // into units, of each band; one more at the end
};

// Units keep inside the leaf's solids, but at corners, where they run through or butt in turn. A
// course that is less than 20 mm high without its bed has none: mortar makes it up.
LaidLeaf layLeaf(const Job& job, const SettingOut& settingOut, const LeafBonds& bonds,
                 const LeafPlan& plan);

}  // namespace model
