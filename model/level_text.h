// How levels and lengths are written wherever a person reads them.
#pragma once

#include <string>

namespace model {

// "+1.650", "0.000", "-0.975": metres to three places, signed. No negative zero.
std::string levelText(double metres);
// "4500": whole millimetres.
std::string lengthText(double metres);

}  // namespace model
