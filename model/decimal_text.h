// Numbers with a fixed count of decimals, wherever a table has them.
#pragma once

#include <string>

namespace model {

// "12.350", "-0.5", "0": no negative zero. Levels and lengths: model/level_text.h.
std::string decimalText(double value, int places);

}  // namespace model
