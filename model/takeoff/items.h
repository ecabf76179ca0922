// What is counted in each part of the building; one function for each, called in a builder's order.
#pragma once

#include "model/takeoff/tally.h"

namespace model {

struct TakeoffInput {
  const Job& job;
  const SettingOut& settingOut;
  const Works& works;
};

// Blocks as they are ordered: "Blocks, 100 wide", "Hollow blocks, 390 wide, cellar walls".
std::string blocksName(const Element& leaf, const Job& job);

void countGroundworks(const TakeoffInput&, Tally&);  // topsoil, dig, fill, stone, muck away
void countConcrete(const TakeoffInput&, Tally&);     // and the waterproofing of the cellar
void countMasonry(const TakeoffInput&, Tally&);      // walls, render
void countUnits(const TakeoffInput&, Tally&);    // a part of it: bricks, blocks and their mortar
void countBuiltIn(const TakeoffInput&, Tally&);  // ties, insulation, closers, damp courses, trays
void countGardenWalls(const TakeoffInput&, Tally&);  // brickwork, coping
void countParapets(const TakeoffInput&, Tally&);     // copings, kneelers, what keeps them dry
void countLintels(const TakeoffInput&, Tally&);
void countFloors(const TakeoffInput&, Tally&);
void countStairs(const TakeoffInput&, Tally&);
void countRoof(const TakeoffInput&, Tally&);
void countOpenings(const TakeoffInput&, Tally&);  // windows and doors
void countTemporary(const TakeoffInput&, Tally&);

}  // namespace model
