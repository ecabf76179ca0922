// What is cut out of a standing building for the walls that are joined to it.
#pragma once

#include <string>
#include <vector>

#include "model/bond/toothing.h"
#include "model/geometry/polygon.h"
#include "model/settingout/stage_key.h"

namespace model {

// An upright strip of the old wall, some heights of which are cut out.
struct JunctionCut {
  struct Hole {
    double bottom = 0, top = 0;
    StageKey stage;       // in which it is cut, before anything else
    bool pocket = false;  // for courses that go in; they are counted
  };
  JunctionPlan plan;
  Polygon place;            // on plan; reaches past the face of the building
  std::vector<Hole> holes;  // lowest first
  std::string what;         // one hole: "pocket", "place for the starter strip"
};

// Pockets for courses that go in. Where starter ties have no joint to lie in because the leaf
// stands tight against the old wall, a place as deep as their strip.
std::vector<JunctionCut> junctionCuts(const Job& job, const SettingOut& settingOut);

// The stage that raises the corners of the lift that a level of the outer leaf is in.
StageKey raisingStage(const Job& job, const SettingOut& settingOut, const LeafPlan& leaf,
                      double level);

}  // namespace model
