// Lines of the setting-out overlay. Private to this folder.
#pragma once

#include <glm/vec3.hpp>

#include "viewer/overlays/overlay_sheet.h"

namespace viewer {

struct SettingOutLook {
  unsigned rgb = ink::kStrings;
  float width = 1.2f;  // units
  float opacity = 1;
  bool dashed = false;
};

// In plan over everything; elsewhere dimmed where something stands in front.
void settingOutLine(OverlaySheet& sheet, const glm::vec3& a, const glm::vec3& b,
                    const SettingOutLook& look);

// A little over the highest ground, where lines and tapes are held; local.
glm::vec3 onSettingOutLevel(const OverlaySheet& sheet, const model::Vec2& p);

}  // namespace viewer
