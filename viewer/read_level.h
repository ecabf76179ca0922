// A level as people write it: metres, or the name that the schedule of levels gives it.
#pragma once

#include <string>
#include <variant>

#include "model/settingout/setting_out.h"

namespace viewer {

struct NoLevel {
  std::string why;  // and what could be written instead
};

// "1.350", "+1.350 m", "damp course", "sill, Hall window", "sill:Hall window"; the beginning of a
// name is enough when all that begin so are equal. Metres over the job's datum.
std::variant<double, NoLevel> readLevel(const std::string& text,
                                        const model::SettingOut& settingOut);

}  // namespace viewer
