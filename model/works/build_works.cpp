#include "model/works/build_works.h"

#include <array>
#include <iterator>

#include "model/in_parallel.h"
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
    buildParapets,          buildGardenWalls,
});

template <typename T>
void append(std::vector<T>& to, std::vector<T>& from) {
  to.insert(to.end(), std::make_move_iterator(from.begin()), std::make_move_iterator(from.end()));
}

// As if the part had gone on in `works`: its units and frames come after those there.
void appendPart(Works& works, Works& part) {
  for (Element& element : part.elements) {
    if (element.unitCount == 0) continue;
    element.firstUnit += works.units.size();
    element.frame += works.frames.size();
  }
  append(works.elements, part.elements);
  append(works.strings, part.strings);
  append(works.units, part.units);
  append(works.frames, part.frames);
}

}  // namespace

Works buildWorks(const Job& job, const SettingOut& settingOut) {
  std::array<Works, kParts.size()> parts;
  inParallel(kParts.size(), [&](size_t i) { kParts[i](job, settingOut, parts[i]); });
  Works works;
  for (Works& part : parts) appendPart(works, part);
  return works;
}

}  // namespace model
