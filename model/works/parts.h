// The kinds of work, one function and one file each; build_works.cpp lists them in order.
//
// Each takes the job and its setting-out, both read only, and adds its elements to `works`.
// None of them reads what another has added: what they share is in SettingOut.
#pragma once

#include "model/job/job.h"
#include "model/settingout/setting_out.h"
#include "model/works/element.h"

namespace model {

void buildStandingBuildings(const Job&, const SettingOut&, Works&);
// Ground, topsoil, dig, blinding, foundations, cellar, backfill, hardcore: everything below the
// ground floor is cut from one partition of the plan, so that it cannot overlap.
void buildGround(const Job&, const SettingOut&, Works&);
void buildCellarWalls(const Job&, const SettingOut&, Works&);  // of blocks; cast ones are ground
void buildGroundFloor(const Job&, const SettingOut&, Works&);
void buildCavityWalls(const Job&, const SettingOut&,
                      Works&);  // both leaves and what is in the cavity
void buildStarterStrips(const Job&, const SettingOut&, Works&);  // where walls meet old ones
void buildDampCourse(const Job&, const SettingOut&, Works&);
void buildLintels(const Job&, const SettingOut&, Works&);
void buildPadstonesAndSills(const Job&, const SettingOut&, Works&);
void buildWindowsAndDoors(const Job&, const SettingOut&, Works&);
void buildRender(const Job&, const SettingOut&, Works&);       // on the outer leaf
void buildGardenWalls(const Job&, const SettingOut&, Works&);  // their piers and copings too
void buildParapets(const Job&, const SettingOut&, Works&);     // their ends, kneelers and copings
void buildUpperFloors(const Job&, const SettingOut&, Works&);
void buildStairs(const Job&, const SettingOut&, Works&);  // with the boards over their wells
void buildWallPlates(const Job&, const SettingOut&, Works&);
void buildRafters(const Job&, const SettingOut&, Works&);
void buildFasciaBoards(const Job&, const SettingOut&, Works&);  // and barge boards
void buildRoofCovering(const Job&, const SettingOut&, Works&);
// Temporary works:
void buildProfiles(const Job&, const SettingOut&, Works&);  // boards, pegs and string lines
void buildTrenchSupport(const Job&, const SettingOut&, Works&);
void buildLevelPins(const Job&, const SettingOut&, Works&);
void buildFormwork(const Job&, const SettingOut&, Works&);
void buildScaffold(const Job&, const SettingOut&, Works&);

}  // namespace model
