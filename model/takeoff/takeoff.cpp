#include "model/takeoff/takeoff.h"

#include "model/takeoff/items.h"

namespace model {

Takeoff deriveTakeoff(const Job& job, const SettingOut& settingOut, const Works& works,
                      const Programme& programme) {
  const TakeoffInput input{job, settingOut, works};
  Tally tally;
  countGroundworks(input, tally);
  countConcrete(input, tally);
  countMasonry(input, tally);
  countBuiltIn(input, tally);
  countParapets(input, tally);
  countLintels(input, tally);
  countGardenWalls(input, tally);
  countFloors(input, tally);
  countStairs(input, tally);
  countRoof(input, tally);
  countOpenings(input, tally);
  countTemporary(input, tally);
  return tally.finish(programme);
}

}  // namespace model
