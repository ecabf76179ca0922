// The rows of the key table, section by section; key_table.cpp joins them.
#pragma once

#include <vector>

#include "model/job/key_table.h"

namespace model {

std::vector<KeySpec> jobKeys();
std::vector<KeySpec> siteKeys();
std::vector<KeySpec> groundKeys();
std::vector<KeySpec> outlineKeys();
std::vector<KeySpec> storeyKeys();
std::vector<KeySpec> wallKeys();
std::vector<KeySpec> foundationKeys();
std::vector<KeySpec> cellarKeys();
std::vector<KeySpec> floorKeys();
std::vector<KeySpec> openingKeys();
std::vector<KeySpec> roofKeys();
std::vector<KeySpec> programmeKeys();

}  // namespace model
