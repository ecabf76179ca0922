// Steel pins with their tops at top of concrete, to which the pour is levelled: along the trenches,
// and on a grid over every slab.
#pragma once

#include <string>
#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"

namespace model {

enum class PinnedConcrete { Foundation, CellarSlab, GroundSlab };

// What it is called: "foundation", "cellar slab", "ground slab".
const char* nameOf(PinnedConcrete concrete);

struct LevelPin {
  // As the crew calls it after the word pin: "3" in a trench, "B3" over the ground slab, "K-B3"
  // over the cellar's. Rows have letters from the south, their pins numbers from the west.
  std::string name;
  PinnedConcrete concrete = PinnedConcrete::Foundation;
  Vec2 at{0, 0};
  double foot = 0, top = 0;  // levels
  // How it is found by tape: along a wall's outer face from its start, and square in from there. A
  // trench pin's own wall; of slabs, the longest.
  size_t wall = 0;
  double along = 0, inward = 0;
  size_t run = 0;    // foundation run, of a trench pin
  double share = 0;  // of the work of setting its kind, by which it is reached; 0 to 1
};

// Trench pins in their order, then those of the cellar slab and of the ground slab, row by row. No
// more than the job's spacing apart; slabs keep their edges, and concrete that comes up into them,
// clear of pins. A ground floor of beams has none.
std::vector<LevelPin> levelPins(const Job& job, const SettingOut& settingOut);

// The part of it for slabs.
std::vector<LevelPin> slabPins(const Job& job, const SettingOut& settingOut);

// "A" to "Z" without I and O, which read as figures, then "AA", "AB".
std::string pinRowLetter(size_t row);

}  // namespace model
