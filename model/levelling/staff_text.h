// How staff readings are written.
#pragma once

#include <string>

namespace model {

// "1.435": metres to three places, more where the staff was read closer; "-0.665" on a staff held
// upside down.
std::string staffText(double reading);

}  // namespace model
