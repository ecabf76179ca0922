#include "model/works/build_works.h"

#include "model/works/parts.h"

namespace model {

Works buildWorks(const Job& job, const SettingOut& settingOut) {
  using Build = void (*)(const Job&, const SettingOut&, Works&);
  // In the order a builder works. A new kind of work is one more line here.
  static constexpr Build kParts[] = {
      buildStandingBuildings, buildProfiles,          buildGround,
      buildTrenchSupport,     buildLevelPins,         buildFormwork,
      buildCellarWalls,       buildCavityWalls,       buildStarterStrips,
      buildGroundFloor,       buildDampCourse,        buildScaffold,
      buildLintels,           buildUpperFloors,       buildWallPlates,
      buildRafters,           buildFasciaBoards,      buildRoofCovering,
      buildWindowsAndDoors,   buildPadstonesAndSills, buildRender,
      buildParapets,          buildGardenWalls,
  };
  Works works;
  for (const Build build : kParts) build(job, settingOut, works);
  return works;
}

}  // namespace model
