// What goes between the leaves, and what both leaves stand on.
#pragma once

#include <vector>

#include "model/settingout/setting_out.h"
#include "model/walls/wall_layer.h"
#include "model/works/cavity_plan.h"
#include "model/works/element.h"

namespace model {

// Lean concrete in the cavity, from the foundation to 225 mm under the damp course (check M16: NHBC
// Good Craftsmanship Guide, brickwork) and not above the ground.
void buildCavityFill(const SettingOut& settingOut, const CavityPlan& plan, Works& works);

// The elevation of a layer from the concrete that the wall stands on, with its steps, to `top`.
std::vector<Rect> aboveConcrete(const SettingOut& settingOut, const WallLayer& layer, size_t wall,
                                double top);
// The lowest top of concrete under any wall.
double lowestConcrete(const SettingOut& settingOut);
// To where the foot of a wall's cavity is filled: that, or the ground where it is lower.
double cavityFillTop(const SettingOut& settingOut, size_t wall);
// Where the cavity insulation begins.
double insulationBottom(const SettingOut& settingOut);

}  // namespace model
