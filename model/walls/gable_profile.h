// The line that a gable goes up to on the faces of a layer of wall.
#pragma once

#include <vector>

#include "model/settingout/setting_out.h"
#include "model/walls/wall_layer.h"

namespace model {

// The line that a gable's masonry goes up to: of the rafters' underside, or a parapet's own.
std::vector<FacePair> gableLineOn(const Job& job, const SettingOut& settingOut,
                                  const WallLayer& layer);

// The line that the rafters' underside draws. From the layer's start to its end; consecutive places
// are joined by straight lines on both faces. Exact wherever the same roof faces stand over both
// faces of the layer; where a valley or hip cuts between the two, the lower face rules.
std::vector<FacePair> rafterLineOn(const SettingOut& settingOut, const WallLayer& layer);

// The lowest level of that line.
double lowestOf(const std::vector<FacePair>& line);
// Its lowest level between two places along the wall.
double lowestBetween(const std::vector<FacePair>& line, double s0, double s1);

// The part of a layer above `bottom` and under the line, with rectangles left out, as one solid.
// The line must lie above `bottom` throughout. Rectangles are kept 20 mm under the line.
Solid gableSolid(const WallLayer& layer, const std::vector<FacePair>& line, double bottom,
                 const std::vector<Rect>& cuts);

}  // namespace model
