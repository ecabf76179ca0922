// What a point of the plan is part of: asked once for every face of the ground's division.
#pragma once

#include "model/works/ground_zones.h"

namespace model {

inline constexpr size_t kNowhere = static_cast<size_t>(-1);

// Off the site nothing but `onSite` counts, and where no topsoil is stripped nothing is built.
struct GroundPlace {
  bool onSite = false, strip = false;
  bool inside = false, underWalls = false;  // of the building's inner faces; of the walls
  size_t obstacle = kNowhere;               // standing building
  size_t triangle = kNowhere;               // of the ground's surface
  size_t run = kNowhere;                    // foundation run in whose band it lies
  size_t lowerRun = kNowhere;               // that goes on under it, at a step
  size_t batter = kNowhere;                 // side of the cellar's dig
  size_t garden = kNowhere;                 // garden wall in whose concrete it lies
  bool underGarden = false;                 // and under its brickwork
  bool cellarBottom = false, cellar = false, cellarInside = false, toe = false, membrane = false;
};

GroundPlace groundPlaceAt(const SettingOut& settingOut, const GroundZones& zones, const Vec2& p);

}  // namespace model
