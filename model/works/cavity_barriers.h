// Where cavity barriers lie, and building them in.
#pragma once

#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"
#include "model/walls/elevation.h"
#include "model/walls/wall_layer.h"
#include "model/works/element.h"

namespace model {

struct BarrierPlan {
  size_t barrier = 0;  // into Job::cavityBarriers
  bool upright = true;
  // In the cavity's elevation. An upright one ends lower where concrete or a slope does; a level
  // one is left out where openings and what is built in round them are.
  Rect rect;
};

// Those of the wall whose cavity `layer` is, upright ones first. `levelTop`: to where the cavity
// goes all along.
std::vector<BarrierPlan> barrierPlan(const Job& job, const SettingOut& settingOut,
                                     const WallLayer& layer, size_t wall, double levelTop);

struct CavityPlan;

// Across the cavity from leaf to leaf, lift by lift with the leaves.
void buildCavityBarriers(const Job& job, const SettingOut& settingOut, const CavityPlan& plan,
                         Works& works);

}  // namespace model
