// Whether the instrument of each set-up can stand where it is said to.
#include "model/checks/parts.h"
#include "model/levelling/set_up.h"
#include "model/lines/stands_on.h"

namespace model {

namespace {

bool standsOver(const Instrument& instrument, double level) {
  return !standingFault(instrument, level);
}

// Without a floor's name: on the ground before the strip or after it, or on the bottom of the
// cellar's dig at any time before its floor is laid.
bool standsSomewhere(const Checking& check, const SetUp& setUp, const Instrument& instrument) {
  const double ground = standsOn(check.job, check.settingOut, setUp);
  if (standsOver(instrument, ground) || standsOver(instrument, ground - check.job.ground.topsoil))
    return true;
  if (!check.job.cellar) return false;
  const Levels& levels = check.settingOut.levels;
  const double room = check.job.cellar->toe + check.job.ground.workingSpace;
  return contains(offsetMitred(check.settingOut.cellarOutline, -room), setUp.at) &&
         (standsOver(instrument, levels.cellarFormation) ||
          standsOver(instrument, levels.cellarSlabTop));
}

// A floor of the building over or under the place, on which it could stand.
std::string floorThatFits(const Checking& check, SetUp setUp, const Instrument& instrument) {
  std::vector<std::string> names;
  for (const Storey& storey : check.job.storeys) names.push_back(storey.name);
  if (check.job.cellar) names.emplace_back(kCellarFloor);
  for (const std::string& name : names) {
    setUp.floor = name;
    const auto floor = floorOf(check.job, check.settingOut, setUp);
    if (floor && standsOver(instrument, *floor) &&
        contains(floorArea(check.job, check.settingOut, setUp), setUp.at))
      return name;
  }
  return {};
}

}  // namespace

void checkSetUps(const Checking& check) {
  for (size_t i = 0; i < check.job.setUps.size(); ++i) {
    const SetUp& setUp = check.job.setUps[i];
    const auto instrument = instrumentOf(check.job, setUp);
    if (!instrument) continue;
    const std::string path = "set_up[" + std::to_string(i) + "]";
    const std::string who = "set-up \"" + setUp.name + "\": ";
    const auto floor = floorOf(check.job, check.settingOut, setUp);
    if (floor && !contains(floorArea(check.job, check.settingOut, setUp), setUp.at)) {
      check.warning(path + ".at", who + "this place is not on floor \"" + setUp.floor + "\"",
                    "check the point, or leave floor out for one on the ground");
      continue;
    }
    if (!floor && standsSomewhere(check, setUp, *instrument)) continue;
    const auto fault = standingFault(*instrument, standsOn(check.job, check.settingOut, setUp), {},
                                     floor ? "floor \"" + setUp.floor + "\"" : "the ground");
    if (!fault) continue;
    const std::string fits = floorThatFits(check, setUp, *instrument);
    check.warning(path + ".backsight", who + *fault,
                  fits.empty() ? "check the backsight, its mark and where the instrument stands"
                               : "if it stands on that floor, write floor = \"" + fits + "\"");
  }
}

}  // namespace model
