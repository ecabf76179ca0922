#include "model/works/build_works.h"

#include <array>
#include <utility>

#include "model/in_parallel.h"
#include "model/works/append_works.h"
#include "model/works/parts.h"

namespace model {
namespace {

using Build = void (*)(const Job&, const SettingOut&, Works&);

// In the order a builder works. A new kind of work is one more line here.
constexpr auto kParts = std::to_array<Build>({
    buildStandingBuildings, buildProfiles,          buildGround,
    buildTrenchSupport,     buildLevelPins,         buildFormwork,
    buildCellarWalls,       buildCavityWalls,       buildStarterStrips,
    buildGroundFloor,       buildDampCourse,        buildScaffold,
    buildLintels,           buildUpperFloors,       buildWallPlates,
    buildRafters,           buildFasciaBoards,      buildRoofCovering,
    buildWindowsAndDoors,   buildPadstonesAndSills, buildRender,
    buildParapets,          buildGardenWalls,       buildStairs,
});

}  // namespace

Works buildWorks(const Job& job, const SettingOut& settingOut) {
  std::array<Works, kParts.size()> parts;
  inParallel(kParts.size(), [&](size_t i) {
    Works own;  // not in its place: what grows beside another's slows both down
    kParts[i](job, settingOut, own);
    parts[i] = std::move(own);
  });
  Works works;
  for (Works& part : parts) appendWorks(works, std::move(part));
  return works;
}

}  // namespace model
