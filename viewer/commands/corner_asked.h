// A corner that a command names, in small letters or capitals.
#pragma once

#include <optional>
#include <string>

#include "model/settingout/setting_out.h"

namespace viewer {

struct CornerAsked {
  std::optional<size_t> corner;  // into SettingOut::corners
  std::string name;              // in capitals
  std::string wrong;             // when there is none: what there is instead
};

CornerAsked cornerAsked(const model::SettingOut& settingOut, std::string name);

}  // namespace viewer
