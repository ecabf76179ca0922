// What is built into the cavity of one wall, as it is planned in model/works/cavity_plan.h.
#pragma once

#include <string>

#include "model/works/cavity_plan.h"
#include "model/works/element.h"

namespace model {

// Ties as far as they cross the cavity: what lies in the leaves' beds is counted and not modelled.
// `corners` are the rectangles of both leaves' racked corners and reveals: a tie that one of them
// covers comes with it, the others with the run.
void buildWallTies(const Job& job, const SettingOut& settingOut, const CavityPlan& plan,
                   const std::vector<Rect>& corners, Works& works);
// The length of a tie that lies deep enough in both leaves, metres.
double tieLength(const Job& job);

// Boards against the inner leaf, in rows between the ties, cut round whatever else is there.
void buildInsulationBoards(const Job& job, const SettingOut& settingOut, const CavityPlan& plan,
                           Works& works);

// What a tray lies over, for ids and for people: "Kitchen window"; "the level barrier, wall A-B".
struct TrayNames {
  std::string id, over;
};
TrayNames namesOf(const SettingOut& settingOut, const CavityPlan& plan, const TrayPlan& tray);

// Trays over openings, level barriers and steps of the damp course as far as they cross the cavity,
// with their stop ends.
void buildCavityTrays(const Job& job, const SettingOut& settingOut, const CavityPlan& plan,
                      Works& works);

// Air bricks in the outer leaf, bedded in their own mortar, and a sleeve from each through the
// cavity and the inner leaf.
void buildAirBricks(const Job& job, const SettingOut& settingOut, const CavityPlan& plan,
                    Works& works);

}  // namespace model
