// Strips for starter ties, fixed upright to the face of a standing building.
#pragma once

#include <vector>

#include "model/settingout/stage_key.h"
#include "model/walls/junctions.h"
#include "model/works/element.h"

namespace model {

struct StripPlan {
  // As much as is fixed in one go.
  struct Length {
    double bottom = 0, top = 0;
    StageKey stage;
    int ties = 0;  // that hook into it
  };
  JunctionPlan plan;
  double d0 = 0, d1 = 0;  // into the wall from its outer face: in the middle of the leaf
  std::vector<Length> lengths;
};

// Storey by storey, before its first corner is raised.
std::vector<StripPlan> starterStrips(const Job& job, const SettingOut& settingOut);

void buildStarterStrips(const Job& job, const SettingOut& settingOut, Works& works);

}  // namespace model
