#include "model/works/gable_rise.h"

#include "model/walls/parapet_line.h"

namespace model {

Placement gableRise(const Job& job, const SettingOut& settingOut) {
  bool parapets = false;
  for (size_t wall = 0; wall < settingOut.walls.size(); ++wall)
    parapets |= parapetOn(job, settingOut, wall) != nullptr;
  return upward({StageKind::Gables}, settingOut.levels.outerLeafTop, gableTop(job, settingOut), 0,
                parapets ? kParapetsUp : 1);
}

}  // namespace model
